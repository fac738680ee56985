using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Journal;

/// <summary>What may be recorded of a vehicle. The journal asks before it writes, whoever sends an entry; it knows how
/// entries stand in a file, and these rules know what they are about.</summary>
public interface IEntryRules
{
    /// <summary>Why an entry may not be recorded, in a sentence that says what to do; null where it may.</summary>
    /// <param name="vehicle">The vehicle before the entries that come together.</param>
    /// <param name="body">One of them.</param>
    string? Refusal(VehicleState vehicle, EntryBody body);
}

/// <summary>An entry says what cannot be: its message says what, for the person who sent it. Nothing was written.</summary>
public sealed class EntryRefusedException(string message) : Exception(message);

/// <summary>For journals whose writer is trusted, as in tests of the journal itself.</summary>
internal sealed class NoEntryRules : IEntryRules
{
    public string? Refusal(VehicleState vehicle, EntryBody body) => null;
}
