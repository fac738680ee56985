using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Which proposals of a note are settled together, and so are one to whoever counts them. Pure.</summary>
public static class ProposalGroups
{
    /// <summary>The groups of a note, in the order spoken; without what is no longer meant since the note was read anew.
    /// </summary>
    /// <remarks>Repeats of one reading belong together: values of one check and place, not settled apart, unless the
    /// note also says that it was adjusted, for then they are a before and an after.</remarks>
    public static IReadOnlyList<IReadOnlyList<Proposal>> Of(WordedNote note)
    {
        var proposals = (note.Proposals ?? []).RemoveAll(one => one.IsReadAnew);
        var groups = new List<List<Proposal>>();
        foreach (var proposal in proposals)
        {
            if (groups.Find(group => AreRepeats(group[0], proposal)) is { } repeats && !WasAdjusted(proposals, proposal))
            {
                repeats.Add(proposal);
            }
            else
            {
                groups.Add([proposal]);
            }
        }

        return groups;
    }

    /// <summary>What waits to be settled in an inspection.</summary>
    public static IEnumerable<IReadOnlyList<Proposal>> OpenIn(InspectionState inspection) =>
        inspection.WordedNotes.SelectMany(Of).Where(group => group[0].State == ProposalState.Open);

    private static bool AreRepeats(Proposal first, Proposal next) =>
        first.Finding.Value is not null
        && next.Finding.Value is not null
        && first.Finding.Check == next.Finding.Check
        && first.Finding.Cylinder == next.Finding.Cylinder
        && first.State == next.State
        && first.RecordedAs == next.RecordedAs;

    private static bool WasAdjusted(IReadOnlyList<Proposal> proposals, Proposal one) => proposals.Any(other =>
        other.Finding.Action is not null
        && other.Finding.Check == one.Finding.Check
        && other.Finding.Cylinder == one.Finding.Cylinder);
}
