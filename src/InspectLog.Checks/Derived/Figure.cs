using System.Globalization;

namespace InspectLog.Checks.Derived;

/// <summary>A named number with its unit, as it stands in a working.</summary>
/// <param name="Name">What it is: "Current".</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Symbol of its unit; empty for a plain number.</param>
public sealed record Figure(string Name, double Value, string Unit)
{
    private const int SignificantDigits = 4;

    /// <summary>Its expanded uncertainty (95.45 %), in <see cref="Unit"/>, above 0; null where it has none.</summary>
    public double? Expanded { get; init; }

    /// <summary>The number with its unit, to four significant digits but never short of whole ones: "4.667 A",
    /// "19685 Ω", "12°". With an uncertainty to two digits of that (JCGM 100:2008, 7.2.6): "6.2 A ± 1.2 A".</summary>
    public string Text => Expanded is { } expanded && Decimals(expanded, 2) is var decimals
        ? $"{WithUnit(Value, Fixed(decimals))} ± {WithUnit(expanded, Fixed(decimals))}"
        : WithUnit(Value, "0." + new string('#', Decimals(Value, SignificantDigits)));

    private static int Decimals(double number, int digits)
    {
        var magnitude = number == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(number)));
        return Math.Clamp(digits - 1 - magnitude, 0, 12);
    }

    private static string Fixed(int decimals) => $"F{decimals.ToString(CultureInfo.InvariantCulture)}";

    private string WithUnit(double value, string format)
    {
        var number = value.ToString(format, CultureInfo.InvariantCulture);
        return Unit is "" or "°" or "%" ? number + Unit : $"{number} {Unit}";
    }
}

/// <summary>One step of a working, to be shown as it was calculated.</summary>
/// <param name="Formula">The formula in words: "supply ÷ (ballast resistor + coil primary)".</param>
/// <param name="Inputs">The numbers put in, in the order the formula names them.</param>
/// <param name="Result">What comes out.</param>
public sealed record Step(string Formula, IReadOnlyList<Figure> Inputs, Figure Result);
