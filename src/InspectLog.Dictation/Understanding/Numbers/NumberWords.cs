using System.Collections.Frozen;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The English words numbers are said with, by stem.</summary>
internal static class NumberWords
{
    private static readonly FrozenDictionary<string, int> Units = new Dictionary<string, int>
    {
        ["one"] = 1, ["two"] = 2, ["three"] = 3, ["four"] = 4, ["five"] = 5,
        ["six"] = 6, ["seven"] = 7, ["eight"] = 8, ["nine"] = 9, ["niner"] = 9,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> Teens = new Dictionary<string, int>
    {
        ["ten"] = 10, ["eleven"] = 11, ["twelve"] = 12, ["thirteen"] = 13, ["fourteen"] = 14, ["fifteen"] = 15,
        ["sixteen"] = 16, ["seventeen"] = 17, ["eighteen"] = 18, ["nineteen"] = 19,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> TensWords = new Dictionary<string, int>
    {
        ["twenty"] = 20, ["thirty"] = 30, ["forty"] = 40, ["fourty"] = 40, ["fifty"] = 50, ["sixty"] = 60,
        ["seventy"] = 70, ["eighty"] = 80, ["ninety"] = 90,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> Denominators = new Dictionary<string, int>
    {
        ["half"] = 2, ["halve"] = 2, ["third"] = 3, ["quarter"] = 4, ["fifth"] = 5, ["eighth"] = 8, ["tenth"] = 10,
        ["sixteenth"] = 16, ["hundredth"] = 100,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> Ordinals = new Dictionary<string, int>
    {
        ["first"] = 1, ["second"] = 2, ["third"] = 3, ["fourth"] = 4, ["fifth"] = 5, ["sixth"] = 6,
        ["seventh"] = 7, ["eighth"] = 8,
    }.ToFrozenDictionary();

    /// <summary>The words that stand for a whole number below a hundred, in one spelling each.</summary>
    public static IEnumerable<string> Spoken =>
        Units.Keys.Concat(Teens.Keys).Concat(TensWords.Keys).Except(["niner", "fourty"]).Order(StringComparer.Ordinal);

    public static int? Unit(string stem) => Units.TryGetValue(stem, out var value) ? value : null;

    public static int? Teen(string stem) => Teens.TryGetValue(stem, out var value) ? value : null;

    public static int? Tens(string stem) => TensWords.TryGetValue(stem, out var value) ? value : null;

    public static int? Denominator(string stem) => Denominators.TryGetValue(stem, out var value) ? value : null;

    public static int? Ordinal(string stem) => Ordinals.TryGetValue(stem, out var value) ? value : null;

    public static bool IsZero(string stem) => stem is "zero" or "oh" or "o" or "nought" or "naught" or "ought" or "nil";

    public static bool IsPoint(string stem) => stem is "point" or "decimal" or "dot" or "comma";
}
