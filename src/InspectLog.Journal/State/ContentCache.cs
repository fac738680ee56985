namespace InspectLog.Journal.State;

/// <summary>The lists of closed inspections that were needed lately, of all vehicles of a garage; those that were not needed for
/// longest go first. Safe for use by many threads.</summary>
/// <param name="mostEntries">How many entries they may be made of altogether; the last that was needed stays, however long it
/// is.</param>
internal sealed class ContentCache(long mostEntries = 8_000)
{
    private readonly Lock _gate = new();
    private readonly Dictionary<object, LinkedListNode<Kept>> _kept = new(ReferenceEqualityComparer.Instance);
    private readonly LinkedList<Kept> _byUse = new();
    private long _entries;

    /// <summary>Lists; null where they are not held.</summary>
    public InspectionContent? Find(object inspection)
    {
        lock (_gate)
        {
            if (!_kept.TryGetValue(inspection, out var node))
            {
                return null;
            }

            _byUse.Remove(node);
            _byUse.AddLast(node);
            return node.Value.Content;
        }
    }

    /// <summary>Holds lists.</summary>
    /// <param name="inspection">What they are of.</param>
    /// <param name="content">The lists.</param>
    /// <param name="entries">How many entries they are made of.</param>
    public void Keep(object inspection, InspectionContent content, long entries)
    {
        lock (_gate)
        {
            if (_kept.ContainsKey(inspection))
            {
                return;
            }

            _kept.Add(inspection, _byUse.AddLast(new Kept(inspection, content, entries)));
            _entries += entries;
            while (_entries > mostEntries && _byUse.Count > 1)
            {
                var oldest = _byUse.First!.Value;
                _byUse.RemoveFirst();
                _kept.Remove(oldest.Inspection);
                _entries -= oldest.Entries;
            }
        }
    }

    /// <summary>Holds none any more.</summary>
    public void Clear()
    {
        lock (_gate)
        {
            _kept.Clear();
            _byUse.Clear();
            _entries = 0;
        }
    }

    private sealed record Kept(object Inspection, InspectionContent Content, long Entries);
}
