namespace InspectLog.App.Demo;

/// <summary>Something that happened in an inspection of the story. Exactly one of its members besides
/// <paramref name="After"/> is set.</summary>
/// <param name="After">Time since the inspection began.</param>
/// <param name="Say">A recording was made.</param>
/// <param name="Measure">A value was read off.</param>
/// <param name="Gauge">A gap was bracketed with gauges.</param>
/// <param name="See">A condition was seen.</param>
/// <param name="Do">Something was done.</param>
/// <param name="Photo">A photo was taken.</param>
/// <param name="Note">A note was typed.</param>
/// <param name="LooseEnd">Something was left undone that no record opens by itself.</param>
/// <param name="Tie">A loose end was put right.</param>
/// <param name="LeaveOut">A check was left out.</param>
/// <param name="Watch">A part that wears was put on the list.</param>
/// <param name="Fit">A new one of a part on the list was fitted.</param>
/// <param name="Close">The inspection was closed.</param>
public sealed record StoryStep(
    TimeSpan After,
    SayStep? Say = null,
    MeasureStep? Measure = null,
    GaugeStep? Gauge = null,
    SeeStep? See = null,
    DoStep? Do = null,
    PhotoStep? Photo = null,
    NoteStep? Note = null,
    LooseEndStep? LooseEnd = null,
    TieStep? Tie = null,
    LeaveOutStep? LeaveOut = null,
    WatchStep? Watch = null,
    FitStep? Fit = null,
    CloseStep? Close = null)
{
    /// <summary>What happened.</summary>
    /// <exception cref="InvalidOperationException">The step says nothing, or several things.</exception>
    public object What => new object?[] { Say, Measure, Gauge, See, Do, Photo, Note, LooseEnd, Tie, LeaveOut, Watch, Fit, Close }
        .OfType<object>()
        .ToArray() is [var only]
            ? only
            : throw new InvalidOperationException($"The step after {After} has to say exactly one thing.");
}

/// <summary>A recording was made.</summary>
/// <param name="Recording">Its file in <c>demo/recordings</c>.</param>
/// <param name="OpenCheck">Check open on the bench; null when none was.</param>
/// <param name="Confirm">Whether what was understood is confirmed; otherwise it waits.</param>
/// <param name="Instrument">Instrument id for readings it gives.</param>
public sealed record SayStep(string Recording, string? OpenCheck, bool Confirm, string? Instrument = null);

/// <summary>A value was read off, once or several times.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Values">The values, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="Instrument">Instrument id.</param>
/// <param name="Expect">The decision the story counts on; a test holds the rule to it.</param>
/// <param name="Cylinder">The place; null for a check done once.</param>
public sealed record MeasureStep(
    string Check, IReadOnlyList<double> Values, string Unit, string Instrument, string Expect, int? Cylinder = null);

/// <summary>A gap was bracketed with gauges.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Goes">Largest gauge that goes, in <paramref name="Unit"/>.</param>
/// <param name="Stops">Smallest gauge that does not, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="Instrument">Id of the gauge set.</param>
/// <param name="Expect">The decision the story counts on; a test holds the rule to it.</param>
/// <param name="Cylinder">The place; null for a check done once.</param>
public sealed record GaugeStep(
    string Check, double Goes, double Stops, string Unit, string Instrument, string Expect, int? Cylinder = null);

/// <summary>A condition was seen, or seen to be absent.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Condition">The sheet's condition word.</param>
/// <param name="Negated">Whether it was absent.</param>
/// <param name="Cylinders">The places, recorded one by one; null for a check done once.</param>
public sealed record SeeStep(
    string Check, string Condition, bool Negated = false, IReadOnlyList<int>? Cylinders = null);

/// <summary>Something was done.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Action">The action word.</param>
/// <param name="Cylinders">The places, recorded one by one; null for a check done once.</param>
public sealed record DoStep(string Check, string Action, IReadOnlyList<int>? Cylinders = null);

/// <summary>A photo was taken.</summary>
/// <param name="File">Its file in <c>demo/photos</c>.</param>
/// <param name="Check">Check it belongs to; null for the inspection as a whole.</param>
/// <param name="Cylinder">The place it shows.</param>
public sealed record PhotoStep(string File, string? Check = null, int? Cylinder = null);

/// <summary>A note was typed.</summary>
/// <param name="Text">The words.</param>
/// <param name="Check">Check it belongs to; null for the inspection as a whole.</param>
public sealed record NoteStep(string Text, string? Check = null);

/// <summary>Something was left undone that no record opens by itself.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Disturbance">Id of one of its disturbances.</param>
public sealed record LooseEndStep(string Check, string Disturbance);

/// <summary>The open loose end of a disturbance was put right.</summary>
/// <param name="Disturbance">Disturbance id.</param>
public sealed record TieStep(string Disturbance);

/// <summary>A check was left out.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Reason">Why.</param>
public sealed record LeaveOutStep(string Check, string Reason);

/// <summary>A part that wears was put on the list.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Months">Months it lasts; null where time does not matter.</param>
/// <param name="Distance">Distance it lasts, in the unit of the inspection's odometer; null where it does not
/// matter.</param>
/// <param name="DaysEarlier">Days before the inspection that it was fitted.</param>
/// <param name="Odometer">Odometer when it was fitted.</param>
public sealed record WatchStep(string Name, int? Months, double? Distance, int DaysEarlier, double Odometer);

/// <summary>A new one of a part on the list was fitted.</summary>
/// <param name="Name">The part.</param>
/// <param name="DaysEarlier">Days before the inspection that it was fitted.</param>
/// <param name="Odometer">Odometer when it was fitted.</param>
public sealed record FitStep(string Name, int DaysEarlier, double Odometer);

/// <summary>The inspection was closed.</summary>
public sealed record CloseStep;
