using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Index;

namespace InspectLog.App.Garages;

/// <summary>The first page.</summary>
/// <param name="Vehicles">Vehicles, those last worked on first.</param>
/// <param name="Speech">Whether dictation can be transcribed now.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record GarageView(
    IReadOnlyList<VehicleCard> Vehicles, SpeechReadiness Speech, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>What there is to say of backups, in sentences.</summary>
    public IReadOnlyList<string> Backup { get; init; } = [];

    /// <summary>Whether it is shown to the owner, who can do something about it.</summary>
    public bool IsOwner { get; init; }
}

/// <summary>A vehicle on the first page.</summary>
/// <param name="Summary">Name, description, picture.</param>
/// <param name="State">"Inspection open since 12:21", "Last looked at 3 May: 13 pass, 1 fail", "Not inspected yet".</param>
/// <param name="OpenInspection">Number of the open inspection; null when there is none.</param>
/// <param name="Attention">What is open: doubts, loose ends, due parts.</param>
public sealed record VehicleCard(
    VehicleSummary Summary, string State, long? OpenInspection, IReadOnlyList<string> Attention);

/// <summary>About the program: what it runs on and what it asks people to heed.</summary>
/// <param name="Speech">The speech model.</param>
/// <param name="DataFolder">Where the journals are.</param>
/// <param name="Works">What comes with the program and was made by others.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record AboutView(
    SpeechReadiness Speech, string DataFolder, IReadOnlyList<ThirdPartyWork> Works, IReadOnlyList<GarageProblem> Problems);

/// <summary>The licences of others, in full.</summary>
/// <param name="Works">What comes with the program and was made by others.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record NoticesView(IReadOnlyList<ThirdPartyWork> Works, IReadOnlyList<GarageProblem> Problems);
