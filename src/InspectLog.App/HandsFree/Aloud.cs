using System.Text.RegularExpressions;

namespace InspectLog.App.HandsFree;

/// <summary>Writes an answer so that a browser's voice says it as a person would: units as words. Pure.</summary>
public static partial class Aloud
{
    private static readonly IReadOnlyDictionary<string, string> Words = new Dictionary<string, string>
    {
        ["mΩ"] = "milliohms",
        ["Ω"] = "ohms",
        ["kΩ"] = "kilohms",
        ["MΩ"] = "megohms",
        ["mV"] = "millivolts",
        ["V"] = "volts",
        ["kV"] = "kilovolts",
        ["mA"] = "milliamps",
        ["A"] = "amps",
        ["mm"] = "millimetres",
        ["in"] = "inches",
        ["thou"] = "thou",
        ["°"] = "degrees",
        ["°C"] = "degrees Celsius",
        ["°F"] = "degrees Fahrenheit",
        ["rpm"] = "revs",
        ["kPa"] = "kilopascals",
        ["bar"] = "bar",
        ["psi"] = "p s i",
        ["%"] = "per cent",
        ["N·m"] = "newton metres",
        ["lbf·ft"] = "pound feet",
        ["km"] = "kilometres",
        ["mi"] = "miles",
        ["µF"] = "microfarads",
        ["nF"] = "nanofarads",
        ["mH"] = "millihenries",
        ["s"] = "seconds",
        ["ms"] = "milliseconds",
        ["min"] = "minutes",
        ["g/cm³"] = "grams per cubic centimetre",
        ["kg/m³"] = "kilograms per cubic metre",
    };

    /// <summary>The answer as it is said.</summary>
    public static string Of(string answer) => Minus().Replace(
        Quantity().Replace(answer, match => Words.TryGetValue(match.Groups["unit"].Value, out var word)
            ? $"{match.Groups["number"].Value} {word}"
            : match.Value),
        "minus ");

    /// <summary>A number and its unit, with a no-break space or nothing between them.</summary>
    [GeneratedRegex(@"(?<number>\d)\u00A0?(?<unit>[^\s\d\u00A0.,;:!?]+)")]
    private static partial Regex Quantity();

    [GeneratedRegex(@"\u2212(?=\d)")]
    private static partial Regex Minus();
}
