using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Reads an instrument from a form: name, unit (which gives the kind), accuracy as "0.8%+3", resolution in
/// that unit, and fullScale, the largest value it shows, which may be left open.</summary>
public static class InstrumentForm
{
    public static Instrument? Read(PostedForm form, WorkshopState workshop)
    {
        var name = form.Required("name", "Give the instrument a name, such as Bench meter, 20 kΩ range.");
        var unit = Units.Find(form.Text("unit"));
        if (unit is null)
        {
            form.Refuse("unit", "Choose the unit it shows.");
        }

        var accuracy = AccuracyOf(form);
        var resolution = Resolution(form);
        var fullScale = FullScale(form, resolution);
        return form.IsValid
            ? new Instrument(IdFor(name, workshop), name, unit!.Kind, accuracy!, unit.ToBase(resolution))
            {
                Ranges = fullScale is { } most ? [RangeOf(unit, most, accuracy!, resolution)] : null,
            }
            : null;
    }

    private static Accuracy? AccuracyOf(PostedForm form)
    {
        var text = form.Required("accuracy", "Type the accuracy from the instrument's papers, such as 0.8%+3.");
        if (text.Length == 0)
        {
            return null;
        }

        if (!Accuracy.TryParse(text, out var accuracy, out var problem))
        {
            form.Refuse("accuracy", problem);
        }

        return accuracy;
    }

    private static double Resolution(PostedForm form)
    {
        var text = form.Required("resolution", "Type the smallest step it shows, such as 0.01.");
        var isNumber = double.TryParse(
            text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var resolution);
        if (text.Length > 0 && (!isNumber || !double.IsFinite(resolution) || resolution <= 0))
        {
            form.Refuse("resolution", "Type a number above 0 with a point, such as 0.01.");
        }

        return resolution;
    }

    /// <summary>The largest value the instrument shows, in its unit; null when the field is empty.</summary>
    private static double? FullScale(PostedForm form, double resolution)
    {
        var text = form.Text("fullScale");
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var most)
            && double.IsFinite(most) && most > resolution)
        {
            return most;
        }

        form.Refuse("fullScale", "Type the largest value it shows, above its smallest step and with a point, such as 200; or leave it empty.");
        return null;
    }

    private static MeterRange RangeOf(Unit unit, double fullScale, Accuracy accuracy, double resolution) => new(
        Printed.Value(unit.ToBase(fullScale), unit), unit.ToBase(fullScale), accuracy, unit.ToBase(resolution));

    private static string IdFor(string name, WorkshopState workshop)
    {
        var letters = name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-');
        var stem = string.Concat(letters).Trim('-');
        var id = stem.Length == 0 ? "instrument" : stem;
        return Enumerable.Range(1, int.MaxValue)
            .Select(number => number == 1 ? id : FormattableString.Invariant($"{id}-{number}"))
            .First(candidate => !workshop.Instruments.Exists(instrument => instrument.Id == candidate));
    }
}
