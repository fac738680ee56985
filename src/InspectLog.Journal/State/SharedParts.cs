using System.Collections.Concurrent;

namespace InspectLog.Journal.State;

/// <summary>What many inspections say in the same words, held once. Safe for use by many threads.</summary>
internal sealed class SharedParts
{
    private readonly ConcurrentDictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<RepeatedWith, RepeatedWith> _instruments = new();

    /// <summary>The one string for an id.</summary>
    public string Text(string id) => _texts.GetOrAdd(id, id);

    /// <summary>The one object for an instrument.</summary>
    public RepeatedWith Instrument(RepeatedWith instrument) => _instruments.GetOrAdd(instrument, instrument);
}
