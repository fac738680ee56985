using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>The events around, and whether all that a finding needs is said with this one.</content>
internal static partial class DropFeatures
{
    private const int WordsBefore = 12;

    private static readonly SpeechRole[] Asides = [SpeechRole.Supposed, SpeechRole.Planned, SpeechRole.Question, SpeechRole.Elsewhere, SpeechRole.Limit];

    private static void AddNeighbours(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        var next = scene.Events.Find(other => other.First >= found.Next);
        var before = scene.Events.FindLast(other => other.Next <= found.First);
        to.Add(Feature.DropNext, next is null ? -1 : (int)next.Kind, next is null ? 0 : (int)note.Between(found.Next, next.First), next?.Kind == EventKind.Answer ? (int)next.Role : -1);
        to.Add(Feature.DropBefore, before is null ? -1 : (int)before.Kind, before is null ? 0 : (int)note.Between(before.Next, found.First));
        to.Add(Feature.DropLeftNext, note.ShapeAt(found.First - 1), next is null ? -1 : (int)next.Kind, next is null ? 0 : (int)note.Between(found.Next, next.First));
        if (next is not null && next.Kind == found.Kind)
        {
            to.Add(Feature.DropCorrected, scene.HasBetween(SpeechRole.Retraction, found.Next, next.First) ? 1 : 0, scene.HasBetween(SpeechRole.Correction, found.Next, next.First) ? 1 : 0, (int)note.Between(found.Next, next.First));
            foreach (var (first, end) in note.Of(SpeechRole.Correction))
            {
                if (found.Next <= first && end <= next.First)
                {
                    to.Add(Feature.DropCorrectedBy, note.Word(first), note.Word(end - 1));
                }
            }
        }

        if (before is not null && before.Kind == found.Kind)
        {
            to.Add(Feature.DropCorrecting, scene.HasBetween(SpeechRole.Retraction, before.Next, found.First) ? 1 : 0, scene.HasBetween(SpeechRole.Correction, before.Next, found.First) ? 1 : 0);
        }
    }

    // What of the same sort is said later, however far: it may put this right.
    private static void AddLater(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        if (scene.Events.Find(other => other.First >= found.Next && other.Kind == found.Kind) is not { } later)
        {
            to.Add(Feature.DropLater, -1);
            return;
        }

        var apart = Math.Min(3, note.SentenceOf(later.First) - note.SentenceOf(found.First));
        var corrected = (scene.HasBetween(SpeechRole.Retraction, found.Next, later.First) ? 2 : 0) + (scene.HasBetween(SpeechRole.Correction, found.Next, later.First) ? 1 : 0);
        var agrees = Agree(scene, found, later) ? 1 : 0;
        to.Add(Feature.DropLater, apart, corrected, agrees);
        to.Add(Feature.DropLater, 8 + apart, agrees);
        var mended = scene.Events.Exists(other => other.Kind == EventKind.Action && found.Next <= other.First && other.First < later.First) ? 1 : 0;
        to.Add(Feature.DropLaterMended, mended, apart, corrected, agrees);
        if (agrees > 0)
        {
            AddBetween(note, found.Next, later.First, to);
            to.Add(Feature.DropLaterWords, Math.Min(apart, 1), note.ShapeAt(later.First - 1), note.ShapeAt(later.First - 2));
            var first = later.First;
            while (first > found.Next && scene.InSentence(first - 1, later.First))
            {
                first--;
            }

            to.Add(Feature.DropLaterWords, 2 + Math.Min(apart, 1), note.ShapeAt(first), note.ShapeAt(first + 1));
            to.Add(Feature.DropLaterWords, 4 + Math.Min(apart, 1), note.ShapeAt(later.Next));
        }
    }

    // The words on the way to what is said later, those next to it last.
    private static void AddBetween(Note note, int first, int next, FeatureList to)
    {
        for (var at = Math.Max(first, next - WordsBefore); at < next; at++)
        {
            if (note.Shape[at] is not WordIds.None and var word)
            {
                to.Add(Feature.DropLaterBetween, word);
            }
        }
    }

    private static bool Agree(NoteScene scene, NoteEvent found, NoteEvent later)
    {
        var checks = ChecksOf(scene, later);
        return ChecksOf(scene, found).Any(checks.Contains);
    }

    // Where in the note the sentence stands, and how its neighbours sound.
    private static void AddSentence(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        var (at, last) = (note.SentenceOf(found.First), note.SentenceOf(note.Length - 1));
        var where = last == 0 ? 0 : at == 0 ? 1 : at == last ? 3 : 2;
        to.Add(Feature.DropSentenceAt, where);
        to.Add(Feature.DropSentenceAt, where, 1 + (scene.Events.Exists(other => other.Kind == EventKind.Value && scene.InSentence(other.First, found.First)) ? 1 : 0));
        var first = found.Next;
        while (first < note.Length && scene.InSentence(first, found.First))
        {
            first++;
        }

        to.Add(Feature.DropNextSentence, first >= note.Length ? WordIds.End : note.ShapeAt(first));
        to.Add(Feature.DropNextSentence, first >= note.Length ? WordIds.End : note.ShapeAt(first), note.ShapeAt(first + 1));
    }

    // What is named in the clause with an event, what is not known there, and which words say that it may be no finding.
    private static void AddComplete(NoteScene scene, NoteEvent found, FeatureList to)
    {
        var note = scene.Note;
        var checks = ChecksOf(scene, found);
        var clause = note.Names.Exists(name => scene.InClause(name.First, found.First) && name.Meanings.Any(naming => checks.Contains(naming.Check))) ? 2
            : note.Names.Exists(name => scene.InSentence(name.First, found.First) && name.Meanings.Any(naming => checks.Contains(naming.Check))) ? 1 : 0;
        var places = scene.Groups.Exists(group => scene.InClause(group.First, found.First)) ? 1 : 0;
        var (unknown, length) = (0, 0);
        for (var at = 0; at < note.Length; at++)
        {
            unknown += note.IsUnknown(at) && scene.InClause(at, found.First) ? 1 : 0;
            length += scene.InClause(at, found.First) ? 1 : 0;
        }

        var (asides, sentence) = (0, 0);
        for (var role = 0; role < Asides.Length; role++)
        {
            asides |= note.Of(Asides[role]).Any(word => scene.InClause(word.First, found.First)) ? 1 << role : 0;
            sentence |= note.Of(Asides[role]).Any(word => scene.InSentence(word.First, found.First)) ? 1 << role : 0;
        }

        to.Add(Feature.Complete, clause, places, Math.Min(unknown, 2), Math.Min(length / 4, 4));
        to.Add(Feature.CompleteAsides, clause, places, asides);
        to.Add(Feature.CompleteAsides, -1, asides, sentence);
        to.Add(Feature.CompletePlain, clause, places, asides == 0 ? sentence == 0 ? 2 : 1 : 0, Math.Min(unknown, 1));
        to.Add(Feature.CompleteTalk, clause, places, (int)Math.Clamp(Math.Round(note.TalkOf(found.First) / 2), -3, 3));
    }

    private static HashSet<int> ChecksOf(NoteScene scene, NoteEvent found) => found switch
    {
        { Number: { } number } => [.. scene.Checks.Where(check => ValueMeanings.Fits(check, number)).Select(check => check.Index)],
        { Condition: { } condition } => [.. condition.Meanings.Select(meaning => meaning.Check)],
        { Action: { } action } => [.. scene.Checks.Where(check => check.Check.Actions.Any(action.Meanings.Contains)).Select(check => check.Index)],
        _ => [.. scene.Checks.Where(check => check.FirstGood >= 0).Select(check => check.Index)],
    };
}
