using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Reads an instrument from a form: name, unit (which gives the kind), accuracy as data sheets write it, resolution
/// in that unit, and what its papers say beyond that, which may be left open: <see cref="RangeFields"/>,
/// <see cref="PaperFields"/>.</summary>
public static class InstrumentForm
{
    /// <summary>The instrument, or null with the errors noted on the form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="workshop">The workshop, for ids that are taken.</param>
    /// <param name="before">The instrument that is changed; null for a new one.</param>
    public static Instrument? Read(PostedForm form, WorkshopState workshop, Instrument? before = null)
    {
        var name = form.Required("name", "Give the instrument a name, such as Bench meter, 20 kΩ range.");
        if (Units.Find(form.Text("unit")) is not { } unit)
        {
            form.Refuse("unit", "Choose the unit it shows.");
            return null;
        }

        var accuracy = AccuracyOf(form, "accuracy", unit);
        var resolution = Numbers.AboveZero(form, "resolution", form.Required("resolution", "Type the smallest step it shows, such as 0.01."), "0.01");
        var ranges = accuracy is null ? [] : RangeFields.Read(form, unit, accuracy, resolution);
        if (accuracy?.PercentOfRange is not null && ranges.Count == 0)
        {
            form.Refuse("fullScale", "The accuracy has a percentage of the range, so type the largest value it shows.");
        }

        var made = new Instrument(before?.Id ?? IdFor(name, workshop), name, unit.Kind, accuracy ?? new(0, 0), unit.DifferenceToBase(resolution))
        {
            Ranges = ranges.Count > 0 ? ranges : null,
            AutoRange = ranges.Count > 1 && form.Ticked("autoRange"),
        };
        var whole = PaperFields.Read(form, unit, made);
        return form.IsValid ? whole : null;
    }

    /// <summary>An accuracy typed in a field; null with what is wrong noted on the form.</summary>
    private static Accuracy? AccuracyOf(PostedForm form, string field, Unit unit)
    {
        var text = form.Required(field, "Type the accuracy from the instrument's papers, such as 0.8%+3.");
        if (text.Length == 0)
        {
            return null;
        }

        if (!Accuracy.TryParse(text, unit.Kind, out var accuracy, out var problem))
        {
            form.Refuse(field, problem);
        }

        return accuracy;
    }

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
