namespace InspectLog.Dictation.Understanding.Words;

/// <summary>The words for signs that stand for one.</summary>
internal static class SignWords
{
    /// <summary>The word for letters that are a unit's symbol; any other word as it is.</summary>
    public static string Symbol(string word) => word switch
    {
        "Ω" or "ω" or "Ω" => "ohm",
        "kω" or "kΩ" => "kohm",
        "mω" or "mΩ" => "mohm",
        _ => word,
    };

    /// <summary>The word for a sign, or nothing.</summary>
    public static string? Sign(char c) => c switch
    {
        '°' or 'º' => "°",
        '#' => "number",
        '%' => "percent",
        '$' => "dollar",
        '£' => "pound",
        '€' => "euro",
        '&' => "and",
        '@' => "at",
        '+' => "plus",
        '±' => "plusminus",
        'Ω' => "ohm",
        _ => null,
    };

    /// <summary>The fraction a sign stands for, or nothing.</summary>
    public static string? Fraction(char c) => c switch
    {
        '½' => "1/2",
        '¼' => "1/4",
        '¾' => "3/4",
        '⅓' => "1/3",
        '⅔' => "2/3",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        _ => null,
    };
}
