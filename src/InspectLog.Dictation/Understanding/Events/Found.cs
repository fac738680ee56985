namespace InspectLog.Dictation.Understanding.Events;

/// <summary>What was found so far of a note, the last first.</summary>
/// <param name="Claim">What it says.</param>
/// <param name="Places">Of which places; 0 for none.</param>
/// <param name="Event">Where it was said.</param>
/// <param name="Before">What was found before it.</param>
internal sealed record Found(Claim Claim, long Places, NoteEvent Event, Found? Before)
{
    /// <summary>This and what was found before, the last first.</summary>
    public static IEnumerable<Found> All(Found? last)
    {
        for (var at = last; at is not null; at = at.Before)
        {
            yield return at;
        }
    }
}
