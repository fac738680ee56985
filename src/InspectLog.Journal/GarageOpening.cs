namespace InspectLog.Journal;

/// <summary>How far the opening of a data folder is.</summary>
/// <param name="Step">What is being done.</param>
/// <param name="Done">Journals that it is done for.</param>
/// <param name="Of">Journals that there are.</param>
public sealed record GarageOpening(OpeningStep Step, int Done, int Of);

/// <summary>What the opening of a data folder does, in order.</summary>
public enum OpeningStep
{
    /// <summary>Every journal is read and checked from its first line to its last.</summary>
    Reading,

    /// <summary>Lists and search are made again, because those on disk are not those of the journals.</summary>
    MakingLists,
}
