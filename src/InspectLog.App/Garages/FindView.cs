using InspectLog.App.Ui;
using InspectLog.Journal;

namespace InspectLog.App.Garages;

/// <summary>What was found.</summary>
/// <param name="Words">The words looked for; empty where nothing was looked for.</param>
/// <param name="Groups">The hits that are shown, by vehicle, the vehicle of the best one first.</param>
/// <param name="Shown">How many hits that is.</param>
/// <param name="Count">How many hits there are in all.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record FindView(
    string Words, IReadOnlyList<FoundGroup> Groups, int Shown, int Count, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Hits that are shown at first, and as many again for each time more are asked for.</summary>
    public const int Step = 100;

    /// <summary>How many hits are not shown.</summary>
    public int More => Count - Shown;
}

/// <summary>Hits of one vehicle.</summary>
/// <param name="Vehicle">Its name.</param>
/// <param name="Hits">The hits, best first.</param>
public sealed record FoundGroup(string Vehicle, IReadOnlyList<FoundEntry> Hits);

/// <summary>A hit.</summary>
/// <param name="Number">Its number among all hits, from 1.</param>
/// <param name="Pieces">What the entry says, with the words looked for marked.</param>
/// <param name="Link">Address of the place where it is shown.</param>
/// <param name="When">When it was made, in the workshop's time.</param>
/// <param name="By">Who made it, with the words looked for marked.</param>
/// <param name="NoLonger">Why it no longer counts as it stands; null where it does.</param>
public sealed record FoundEntry(
    int Number,
    IReadOnlyList<TextPiece> Pieces,
    string Link,
    DateTimeOffset When,
    IReadOnlyList<TextPiece> By,
    string? NoLonger);
