using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>What a page showed of an inspection, so that closing it later tells what came in between. Pure.</summary>
/// <param name="Next">Sequence of the journal's next entry when the page was made.</param>
/// <param name="Digest">Digest of all that counts for closing.</param>
public sealed record ShownInspection(long Next, string Digest)
{
    /// <summary>What a page made now shows.</summary>
    public static ShownInspection Of(VehicleState vehicle, InspectionState inspection) =>
        new(vehicle.NextSequence, DigestOf(inspection));

    /// <summary>As a form brings it; null where it brings none.</summary>
    public static ShownInspection? Read(string text) =>
        text.Split('.') is [var next, var digest]
        && long.TryParse(next, NumberStyles.None, CultureInfo.InvariantCulture, out var sequence)
            ? new(sequence, digest)
            : null;

    /// <summary>As a form carries it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Next}.{Digest}");

    /// <summary>What came in since, in a sentence that ends with what to do; null where nothing did.</summary>
    public string? News(InspectionState now)
    {
        if (DigestOf(now) == Digest)
        {
            return null;
        }

        List<string> came =
        [
            .. now.Everything.Where(one => one.Sequence >= Next).Select(Named),
            .. now.LooseEnds.Where(end => end.Sequence >= Next).Select(end => $"a loose end ({Phrases.Lower(end.What.Text)})"),
        ];
        var what = came.Count > 0 ? Phrases.Joined([.. came.Distinct()]) : "something was read, settled or put right";
        return $"Since this page was opened, something new came in: {what}. Nothing was closed. Look at it, then close.";
    }

    private static string Named(IKept one) => (one switch
    {
        VoiceNote { IsWaiting: true } => "a voice note that is not read yet",
        VoiceNote => "a voice note",
        PhotoCapture => "a photo",
        TypedNote => "a note",
        { Says: ReadingDecided } => "a reading",
        { Says: ObservationMade } => "an observation",
        _ => "something done",
    }) + $" of {Times.Clock(one.Time)}";

    private static string DigestOf(InspectionState inspection)
    {
        var all = new StringBuilder();
        foreach (var one in inspection.Everything)
        {
            all.Append(CultureInfo.InvariantCulture, $"k{one.Sequence},{one.History.LastChange?.ChangedBy},{one.History.Withdrawn is not null}");
        }

        foreach (var marks in inspection.PhotoMarks)
        {
            all.Append(CultureInfo.InvariantCulture, $"m{marks.Sequence},{marks.History.LastChange?.ChangedBy},{marks.History.Withdrawn is not null}");
        }

        foreach (var note in inspection.VoiceNotes)
        {
            all.Append(CultureInfo.InvariantCulture, $"v{note.Sequence},{note.IsWaiting}");
        }

        foreach (var proposal in ProposalGroups.OpenIn(inspection).SelectMany(group => group))
        {
            all.Append(CultureInfo.InvariantCulture, $"p{proposal.Reference.Recording},{proposal.Reference.Index}");
        }

        foreach (var end in inspection.LooseEnds)
        {
            all.Append(CultureInfo.InvariantCulture, $"e{end.Sequence},{end.IsOpen}");
        }

        foreach (var check in inspection.LeftOut.Keys.Order(StringComparer.Ordinal))
        {
            all.Append(CultureInfo.InvariantCulture, $"l{check}");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all.ToString())))[..16];
    }
}
