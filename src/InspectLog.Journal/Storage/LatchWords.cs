namespace InspectLog.Journal.Storage;

/// <summary>What people are told when a write fails: what was not kept, what is closed by it, and what goes on.</summary>
/// <param name="what">What failed, as a clause's beginning: "Writing the journal of Marigold".</param>
/// <param name="last">What was not kept: "What was done to Marigold last".</param>
/// <param name="closed">What is closed, as far as "until": "nothing more can be added to it".</param>
/// <param name="others">What goes on, in a sentence.</param>
/// <param name="concerning">Says in the problem what it concerns.</param>
internal sealed class LatchWords(
    Func<string> what, Func<string> last, string closed, string others, Func<GarageProblem, GarageProblem> concerning)
{
    // ENOSPC and EDQUOT on Linux, EDQUOT on macOS, ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL on Windows
    private static readonly int[] DiskFull = [28, 122, 69, unchecked((int)0x80070027), unchecked((int)0x80070070)];

    /// <summary>Those of a vehicle's journal.</summary>
    /// <param name="id">The vehicle.</param>
    /// <param name="name">What people call it, asked for when something fails.</param>
    public static LatchWords OfVehicle(string id, Func<string> name) => new(
        () => $"Writing the journal of {name()}",
        () => $"What was done to {name()} last",
        "nothing more can be added to it",
        "Other vehicles can be worked on.",
        problem => problem with { VehicleId = id });

    /// <summary>Those of the workshop's journal.</summary>
    public static LatchWords OfWorkshop() => new(
        () => "Writing the workshop's journal",
        () => "What was done in the workshop last",
        "instruments, own words and devices stay as they are",
        "Vehicles can be worked on.",
        problem => problem with { IsOfWorkshop = true });

    /// <summary>Those of recordings and photos.</summary>
    public static LatchWords OfMedia() => OfPart(
        "Writing a recording or photo", "What was recorded or taken last", "no recordings and photos can be kept", "Readings and typed notes can be recorded.");

    /// <summary>Those of check sheets.</summary>
    public static LatchWords OfSheets() => OfPart(
        "Writing a check sheet", "The check sheet", "no inspection can be started", "Open inspections can go on.");

    /// <summary>Those of vehicles that are being added.</summary>
    public static LatchWords OfAdding() => OfPart(
        "Writing a new vehicle", "The new vehicle", "no vehicle can be added", "The vehicles that are here can be worked on.");

    /// <summary>What is told of a failure.</summary>
    public GarageProblem ProblemOf(Exception cause) => concerning(new(ReadOnly: true, MessageFor(cause)) { IsFailedWrite = true });

    private static LatchWords OfPart(string what, string last, string closed, string others) =>
        new(() => what, () => last, closed, others, problem => problem with { IsOfOnePart = true });

    /// <summary>Whether something failed because a disk is full.</summary>
    public static bool IsDiskFull(Exception cause) => DiskFull.Contains(cause.HResult);

    private string MessageFor(Exception cause) => IsDiskFull(cause)
        ? $"The disk is full. {last()} was not kept, and {closed} until you free some space and start InspectLog again. "
            + others
        : $"{what()} failed ({cause.Message}). {last()} was not kept, and {closed} until InspectLog is started again. {others} "
            + "Check the disk, make a copy of the data folder, and start InspectLog again.";
}
