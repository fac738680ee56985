using InspectLog.App.Forms;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Importing;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Archiving;

/// <summary>The page on which an archive is asked for.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="HasKey">Whether the workshop has a key to seal it with.</param>
/// <param name="IsProtected">Whether that is kept under a passphrase.</param>
/// <param name="Form">The form when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ArchiveView(VehicleState Vehicle, bool HasKey, bool IsProtected, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Voice notes that are still to be read.</summary>
    public int Waiting { get; } = Vehicle.Inspections.Sum(inspection => inspection.UnreadVoiceNotes);
}

/// <summary>The page of an archive that was asked for.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Id">The archive's number.</param>
/// <param name="State">How it stands.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record MadeArchiveView(VehicleState Vehicle, string Id, ArchiveState State, IReadOnlyList<GarageProblem> Problems);

/// <summary>The page on which an archive is taken in.</summary>
/// <param name="Form">The form when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ImportView(RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);

/// <summary>The page that says what an archive that was sent would do.</summary>
/// <param name="Id">Its number; null where it is not intact, and was not kept.</param>
/// <param name="Faults">What is wrong with it.</param>
/// <param name="Facts">What it tells; null where it tells nothing.</param>
/// <param name="Plan">What taking it in would do; null where it is not intact.</param>
/// <param name="Printed">What came of holding a printed report against it; null where none was given, or it cannot be read.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ImportCheckView(
    string? Id, IReadOnlyList<BagFault> Faults, ArchiveFacts? Facts, ImportPlan? Plan, PrintedFinding? Printed, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>What is wrong with its seals, in sentences.</summary>
    public IReadOnlyList<string> SealFaults { get; } = Facts?.Seals.Faults() ?? [];

    /// <summary>Faults shown on the page at most.</summary>
    public const int MostFaults = 50;
}
