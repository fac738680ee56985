namespace InspectLog.Journal.Entries;

/// <summary>How far the journals of vehicles are: of those that grew since it was last noted. Machine-made, and written to
/// the workshop's journal, so that a journal that was cut short, written anew or taken away is missed.</summary>
/// <param name="Vehicles">The vehicles.</param>
[EntryKind("vehicles-noted")]
public sealed record VehiclesNoted(IReadOnlyList<NotedJournal> Vehicles) : EntryBody;

/// <summary>How far a vehicle's journal was.</summary>
/// <param name="Id">Vehicle id.</param>
/// <param name="Entries">How many entries it had.</param>
/// <param name="Head">Hash of the last of them, lower-case hex.</param>
public sealed record NotedJournal(string Id, long Entries, string Head);

/// <summary>How far the workshop's own journal was when an inspection was closed. Machine-made, and written to the
/// vehicle's journal with the closing.</summary>
/// <param name="Entries">How many entries it had.</param>
/// <param name="Head">Hash of the last of them, lower-case hex.</param>
[EntryKind("workshop-noted")]
public sealed record WorkshopNoted(long Entries, string Head) : EntryBody;

/// <summary>A person knows that a journal no longer holds what was noted of it, and goes on without. Written to the
/// workshop's journal.</summary>
/// <param name="Vehicle">The vehicle; null for the workshop's own journal.</param>
/// <param name="Entries">How many entries were noted.</param>
/// <param name="Head">The hash that was noted.</param>
[EntryKind("loss-accepted")]
public sealed record LossAccepted(string? Vehicle, long Entries, string Head) : EntryBody;
