using InspectLog.Journal.Sealing;

namespace InspectLog.Archives.Checking;

/// <summary>What the seals of an archive say and do not say, in sentences for people. Pure.</summary>
public static class ArchiveWords
{
    /// <summary>What the seal of an archive proves, and what it does not.</summary>
    public static readonly IReadOnlyList<string> Meaning =
    [
        .. SealWords.Meaning,
        "The seal of an archive is of its manifest too, and so of every file in its folder data: the reports, the table, the recordings and photos as they were given. That a copy of a photo shows the same as the original it stands for is the word of whoever made the archive.",
    ];
}
