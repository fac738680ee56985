using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Proposals;

/// <summary>One or more proposals that are settled together: a single finding, or the repeats of one reading.</summary>
/// <param name="Proposals">The proposals, in the order spoken; at least one.</param>
/// <param name="Check">The check they are about; null when the sheet does not have it.</param>
/// <param name="Title">"Coil circuit", or "Lead 4".</param>
/// <param name="Text">What it says: "0.8 Ω and 0.7 Ω", "chafed", "replaced".</param>
/// <param name="Preview">For a reading with limits: what the decision would be; null otherwise.</param>
/// <param name="Doubt">Why to look twice, in words; null without doubt.</param>
public sealed record ProposalCard(
    IReadOnlyList<Proposal> Proposals, Check? Check, string Title, string Text, Conformity? Preview, string? Doubt)
{
    /// <summary>For a reading: what would be recorded; null otherwise.</summary>
    public ReadingDecided? Would { get; init; }

    /// <summary>The first of them, which speaks for all.</summary>
    public Proposal First => Proposals[0];

    /// <summary>Whether they are settled, and how.</summary>
    public ProposalState State => First.State;

    /// <summary>Whether its check is done for each place and nobody said which: a person has to.</summary>
    public bool NeedsPlace => Check is { PerCylinder: true } && First.Finding.Cylinder is null;

    /// <summary>What a person is asked before it can be confirmed: "Which lead?"; null where its place is known.</summary>
    public string? WhichPlace => NeedsPlace ? $"Which {Check!.PlaceNoun}?" : null;

    /// <summary>Whether it has a value outside what the check can sensibly read, by the limits that count now.</summary>
    public bool IsUnlikely => Check?.Measurand is { Plausible: var plausible } && Proposals
        .SelectMany(one => new[] { one.Finding.Value, one.Finding.Goes, one.Finding.Stops })
        .Any(value => value is { } number && !plausible.Holds(number));

    /// <summary>What its values were read off, or what has to be said of that first; null where it has none.</summary>
    public ReadOff? ReadOff { get; init; }

    /// <summary>What no instrument at hand shows, in words; null where one does.</summary>
    public string? NotShown => ReadOff switch
    {
        ReadOff.Asked asked => asked.Question,
        ReadOff.Refused refused => refused.Message,
        _ => null,
    };

    /// <summary>Whether a person should look twice.</summary>
    public bool IsDoubtful => Doubt is not null;
}
