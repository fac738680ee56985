using System.Globalization;

namespace InspectLog.Checks.Derived;

/// <summary>A named number with its unit, as it stands in a working.</summary>
/// <param name="Name">What it is: "Current".</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Symbol of its unit; empty for a plain number.</param>
public sealed record Figure(string Name, double Value, string Unit)
{
    private const int SignificantDigits = 4;

    /// <summary>The number with its unit, to four significant digits but never short of whole ones: "4.667 A",
    /// "19685 Ω", "12°".</summary>
    public string Text
    {
        get
        {
            var magnitude = Value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(Value)));
            var decimals = Math.Clamp(SignificantDigits - 1 - magnitude, 0, 12);
            var number = Value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
            return Unit is "" or "°" or "%" ? number + Unit : $"{number} {Unit}";
        }
    }
}

/// <summary>One step of a working, to be shown as it was calculated.</summary>
/// <param name="Formula">The formula in words: "supply ÷ (ballast resistor + coil primary)".</param>
/// <param name="Inputs">The numbers put in, in the order the formula names them.</param>
/// <param name="Result">What comes out.</param>
public sealed record Step(string Formula, IReadOnlyList<Figure> Inputs, Figure Result);
