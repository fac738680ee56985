using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Wear;

/// <summary>Reads the fields of a part that wears: <c>name</c>; <c>months</c>, <c>distance</c>, <c>distanceUnit</c>;
/// <c>fittedOn</c>, <c>odometer</c>, <c>odometerUnit</c>. What is wrong is noted on the form.</summary>
public static class WearFields
{
    private const int LongestName = 80;
    private const int MostMonths = 1200;
    private static readonly DateOnly EarliestFitting = new(1900, 1, 1);

    /// <summary>A part to watch; null when the form is wrong.</summary>
    public static WearPartAdded? Part(PostedForm form, DateOnly today)
    {
        var name = form.Required("name", "Say which part it is, such as Spark plugs.");
        if (name.Length > LongestName)
        {
            form.Refuse("name", $"Keep the name to {LongestName} characters.");
        }

        var interval = Interval(form);
        var fitting = Fitting(form, today);
        return form.IsValid ? new WearPartAdded(name, interval, fitting!) : null;
    }

    /// <summary>When a part was fitted; null when the form is wrong.</summary>
    public static Fitting? Fitting(PostedForm form, DateOnly today)
    {
        var on = Day(form, today);
        var odometer = OdometerFields.Reading(form, "odometer");
        return form.IsValid
            ? new Fitting(on, odometer, odometer is null ? null : OdometerFields.Unit(form, "odometerUnit"))
            : null;
    }

    /// <summary>How long a part lasts; what is wrong is noted on the form.</summary>
    public static WearInterval Interval(PostedForm form)
    {
        var months = form.Whole("months", "Type the months as a whole number, such as 24.");
        if (months is < 1 or > MostMonths)
        {
            form.Refuse("months", $"Type from 1 to {MostMonths} months.");
        }

        var distance = OdometerFields.Reading(form, "distance");
        if (distance == 0)
        {
            form.Refuse("distance", "Type a distance above 0, or leave it empty.");
        }

        if (form.IsValid && months is null && distance is null)
        {
            form.Refuse("months", "Say how long it lasts: months, a distance, or both.");
        }

        return new WearInterval(months, distance, distance is null ? null : OdometerFields.Unit(form, "distanceUnit"));
    }

    private static DateOnly Day(PostedForm form, DateOnly today)
    {
        var text = form.Required("fittedOn", "Say on which day it was fitted.");
        var isDay = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day);
        if (text.Length > 0 && !isDay)
        {
            form.Refuse("fittedOn", "Write the day as year, month and day: 2026-05-03.");
        }
        else if (day > today)
        {
            form.Refuse("fittedOn", "That day is still to come. Give the day it was fitted.");
        }
        else if (isDay && day < EarliestFitting)
        {
            form.Refuse("fittedOn", "That day is too long ago to be right. Check the year.");
        }

        return day;
    }
}
