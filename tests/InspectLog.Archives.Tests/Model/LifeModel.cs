namespace InspectLog.Archives.Tests.Model;

/// <summary>An entry as the model has it.</summary>
/// <param name="Hash">The hash it was acknowledged with.</param>
/// <param name="Actor">Who made it.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Says">A note's text, an owner's name, a recording's hash; empty for what says nothing of the kind; null once it is
/// gone.</param>
/// <param name="About">Where the entry stands that it is about, from 0; null where it is about none.</param>
internal sealed record ModelEntry(string Hash, string Actor, string Kind, string? Says, int? About = null)
{
    public const string Nobody = "(name erased)";
    public const string Note = "note-written";
    public const string Recording = "recording-kept";
    public const string Owner = "private-facts";
    public const string Choice = "report-choice";
    public const string Restated = "entry-restated";
}

/// <summary>What a garage holds, as plain lists. Everything that may be done to a garage is a few lines here.</summary>
internal sealed record LifeModel(Dictionary<string, List<ModelEntry>> Vehicles)
{
    /// <summary>A copy that goes its own way.</summary>
    public LifeModel Copy() => new(Vehicles.ToDictionary(one => one.Key, one => one.Value.ToList()));

    /// <summary>Whether a name is that of an owner or worker.</summary>
    public bool Knows(string person) => Vehicles.Values.SelectMany(entries => entries).Any(entry => entry.Actor == person || (entry.Kind == ModelEntry.Owner && entry.Says == person));

    /// <summary>A vehicle without a person: what is gone, what is said again, who made it no longer. The entries that say so are
    /// not in it.</summary>
    /// <returns>The entries; where those stand that are said again; whether anything changed.</returns>
    public static (List<ModelEntry> Entries, List<int> Restated, bool IsChanged) Without(List<ModelEntry> entries, string person, bool asWorker)
    {
        var leftOut = LeftOut(entries);
        bool IsGone(int at) => entries[at] is var entry && entry.Says is { } says
            && (entry.Kind is ModelEntry.Owner ? says == person
                : entry.Kind is ModelEntry.Recording ? entry.Actor == person
                : entry.Kind is ModelEntry.Note && leftOut.Contains(at) && (entry.Actor == person || says.Contains(person, StringComparison.Ordinal)));

        var gone = Enumerable.Range(0, entries.Count).Where(IsGone).ToHashSet();
        var restated = Enumerable.Range(0, entries.Count)
            .Where(at => !gone.Contains(at) && entries[at] is { Kind: ModelEntry.Note, Says: { } says } && says.Contains(person, StringComparison.Ordinal)).ToList();
        var after = entries.Select((entry, at) =>
        {
            // What was said again before, and is now gone or said anew, was said in an entry of its own, which goes.
            var says = gone.Contains(at) || (entry.Kind == ModelEntry.Restated && entry.About is { } about && (gone.Contains(about) || restated.Contains(about))) ? null
                : restated.Contains(at) ? entry.Says!.Replace(person, ModelEntry.Nobody, StringComparison.Ordinal)
                : entry.Says;
            return entry with { Says = says, Actor = asWorker && entry.Actor == person ? ModelEntry.Nobody : entry.Actor };
        }).ToList();
        return (after, restated, !after.SequenceEqual(entries));
    }

    /// <summary>A vehicle as the profile for buyers gives it.</summary>
    public static List<ModelEntry> ForBuyer(List<ModelEntry> entries)
    {
        var leftOut = LeftOut(entries);
        return [.. entries.Select((entry, at) => entry.Kind == ModelEntry.Owner || leftOut.Contains(at)
            || (entry.Kind == ModelEntry.Restated && leftOut.Contains(entry.About!.Value)) ? entry with { Says = null } : entry)];
    }

    private static HashSet<int> LeftOut(List<ModelEntry> entries) =>
        [.. entries.Where(entry => entry is { Kind: ModelEntry.Choice, About: not null }).Select(entry => entry.About!.Value)];
}
