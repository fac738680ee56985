using System.Globalization;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Vocabulary;

/// <summary>Chooses the numbers of example findings.</summary>
/// <remarks>A speech model may copy a number from its prompt into what it did not hear well. So every figure is well
/// formed and lies outside the plausible span of its check, and every cylinder is one more than the engine has: copied,
/// either is doubted by the reader and seen by a person. None comes near a limit or nominal value of the open check, in
/// whatever unit, so that none can pass for a reading of that check either. No figure is given twice.</remarks>
internal sealed class ExampleFigures
{
    private const double TooNear = 0.05;
    private const int CylindersTried = 6;

    private static readonly double[] AboveSpan = [1.43, 1.57, 1.71, 1.86, 2.14, 2.37];
    private static readonly double[] BelowSpan = [0.6, 0.4, 0.7, 0.5, 0.3];

    private readonly int _cylinders;
    private readonly IReadOnlyList<double> _avoided;
    private readonly HashSet<string> _given = [];

    /// <summary>Figures for the checks of a sheet while one of them is open.</summary>
    public ExampleFigures(CheckSheet sheet, Check? open) => (_cylinders, _avoided) = (sheet.Cylinders, Avoided(open));

    /// <summary>A figure with its unit as it should be written down: "71.5 k", "0.03 mm"; null where none will do.</summary>
    public string? Value(Measurand measurand, Unit unit) => Candidates(measurand, unit)
        .Where(figure => !measurand.Plausible.Holds(unit.ToBase(figure.Number)) && !IsAvoided(figure.Number))
        .Select(figure => $"{figure.Text} {Written(unit)}")
        .FirstOrDefault(_given.Add);

    /// <summary>A cylinder the engine does not have.</summary>
    /// <param name="turn">Counts the examples, so that they differ.</param>
    public int Cylinder(int turn) => Enumerable.Range(0, CylindersTried)
        .Select(further => _cylinders + 1 + (turn + further) % CylindersTried)
        .First(cylinder => !IsAvoided(cylinder));

    // Small lengths show the nought before the point; everything else is above its span.
    private static IEnumerable<(double Number, string Text)> Candidates(Measurand measurand, Unit unit)
    {
        var (bound, factors) = unit == Units.Millimetre && measurand.Plausible.From > 0
            ? (measurand.Plausible.From, BelowSpan)
            : (measurand.Plausible.To, AboveSpan);
        var largest = unit.FromBase(bound);
        var format = unit == Units.Millimetre ? "0.00" : unit == Units.Thou || unit == Units.Degree || largest >= 70 ? "0" : "0.0";
        foreach (var factor in factors)
        {
            var text = (largest * factor).ToString(format, CultureInfo.InvariantCulture);
            yield return (double.Parse(text, CultureInfo.InvariantCulture), text);
        }
    }

    private static string Written(Unit unit) =>
        unit == Units.Kilohm ? "k" : unit == Units.Ohm ? "ohms" : unit == Units.Volt ? "volts" : unit == Units.Degree ? "degrees" : unit.Symbol;

    private static List<double> Avoided(Check? open)
    {
        if (open?.Measurand is not { } measurand)
        {
            return [];
        }

        Unit[] units = measurand.Kind == QuantityKind.Length ? [Units.Millimetre, Units.Thou, Units.Inch]
            : measurand.Kind == QuantityKind.Resistance ? [Units.Ohm, Units.Kilohm]
            : [measurand.DisplayUnit];
        return
        [
            .. from size in new[] { measurand.Limits?.Lower, measurand.Limits?.Upper, measurand.Nominal }
               where size is not null
               from unit in units
               select unit.FromBase(size.Value),
        ];
    }

    private bool IsAvoided(double number) => _avoided.Any(avoided => Math.Abs(number - avoided) <= TooNear * Math.Abs(avoided));
}
