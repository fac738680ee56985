using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>One item of the stream. Of a note in words it is known at once what of it waits; what is decided about its findings
/// is worked out only when it is shown, since a long inspection has many notes and a page shows few.</summary>
/// <param name="kept">The voice note, photo or typed note, or the record made by hand; withdrawn or not.</param>
/// <param name="cards">Works out what was understood of a note in words, repeats of one reading together.</param>
public sealed class CaptureView(IKept kept, Func<WordedNote, IReadOnlyList<ProposalCard>> cards)
{
    private readonly IReadOnlyList<IReadOnlyList<Proposal>> _groups = kept is WordedNote note ? ProposalGroups.Of(note) : [];
    private IReadOnlyList<ProposalCard>? _cards;

    /// <summary>The capture or record.</summary>
    public IKept Kept => kept;

    /// <summary>What was understood of a note in words, in the order spoken; none of anything else.</summary>
    public IReadOnlyList<ProposalCard> Cards => _cards ??= _groups.Count > 0 ? cards((WordedNote)kept) : [];

    /// <summary>How many of its cards wait to be settled.</summary>
    public int ToSettle => _groups.Count(group => group[0].State == ProposalState.Open);

    /// <summary>Whether one of its cards was confirmed.</summary>
    public bool HasConfirmed => _groups.Any(group => group[0].State == ProposalState.Confirmed);
}
