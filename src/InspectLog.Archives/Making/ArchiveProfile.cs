namespace InspectLog.Archives.Making;

/// <summary>What somebody is given of a vehicle's record.</summary>
/// <param name="Id">Its name on the command line and in archives.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Holds">What is in it, in a sentence.</param>
/// <param name="LeavesOut">What is left out, each in a sentence; none where nothing is.</param>
public sealed record ArchiveProfile(string Id, string Title, string Holds, IReadOnlyList<string> LeavesOut)
{
    /// <summary>Whether owner, contact and vehicle identification number are withheld.</summary>
    public bool WithholdsPrivateFacts { get; init; }

    /// <summary>Whether notes and photos that were left out of the report are withheld, with all that was understood of
    /// them.</summary>
    public bool WithholdsLeftOutOfReport { get; init; }

    /// <summary>Whether the sound of recordings is withheld.</summary>
    public bool WithholdsRecordings { get; init; }

    /// <summary>Whether of photos only upright copies are given, without where and with what they were taken.</summary>
    public bool PhotosAreCopies { get; init; }
}

/// <summary>The one list of what can be given to whom, for archives and for whatever else is handed over.</summary>
public static class ArchiveProfiles
{
    /// <summary>All of it.</summary>
    public static ArchiveProfile Everything { get; } = new(
        "everything",
        "Everything",
        "The whole journal with the owner’s name, contact and vehicle number, every recording and every photo as the camera made it. For you, and for whoever keeps the record on.",
        []);

    /// <summary>What a buyer may have.</summary>
    public static ArchiveProfile Buyer { get; } = new(
        "buyer",
        "For a buyer",
        "Every reading, decision, observation and action, the notes that stand in a report, and the photos.",
        [
            "The owner’s name and contact, and the vehicle number but for its end.",
            "Notes and photos that are left out of the report, with all that was understood of them.",
            "The sound of recordings. What was understood of them stays in words.",
            "The photos as the camera made them, which may say where they were taken. Clean copies stand in their place, and the hashes of the originals are named.",
        ])
    {
        WithholdsPrivateFacts = true,
        WithholdsLeftOutOfReport = true,
        WithholdsRecordings = true,
        PhotosAreCopies = true,
    };

    /// <summary>All profiles.</summary>
    public static IReadOnlyList<ArchiveProfile> All { get; } = [Everything, Buyer];

    /// <summary>The profile of this name; null where there is none.</summary>
    public static ArchiveProfile? Find(string id) => All.FirstOrDefault(profile => profile.Id == id);
}
