using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Answers: the same, yes, nothing.</content>
internal sealed partial class EventOptions
{
    private const int MostBehind = 12;

    private enum AnswerSource
    {
        Ahead,
        Behind,
        FirstGood,
    }

    private void AddAnswers(NoteEvent found, List<EventOption> options)
    {
        var seen = new HashSet<Meaning>();
        var evidence = new Dictionary<int, uint[]>();
        foreach (var (meaning, source) in Answerable(found))
        {
            if (!seen.Add(meaning))
            {
                continue;
            }

            var shared = evidence.TryGetValue(meaning.Check, out var known) ? known : evidence[meaning.Check] = EvidenceFor(found, scene.Checks[meaning.Check]);
            foreach (var negated in new[] { false, true })
            {
                var sign = (int)found.Role * 2 + Flag(negated);
                _features.Add(Feature.AnswerRight, (int)found.Role, Note.ShapeAt(found.Next));
                _features.Add(Feature.Answer, sign);
                _features.Add(Feature.AnswerMeaning, sign, (int)Of(meaning).Meaning);
                _features.Add(Feature.AnswerMeaning, sign, (int)Of(meaning).Meaning, 1 + (int)source);
                _features.Add(Feature.AnswerSource, sign, (int)source);
                _features.Add(Feature.AnswerWords, sign, Note.Word(found.First), Note.Word(found.Next - 1));
                Keep(options, Claim.Observation(meaning.Check, meaning.Condition, negated), shared);
            }
        }

        options.Add(new(OptionKind.Copy, null, [], []));
    }

    // What an answer can be about: the condition just ahead, those said before, or that a thing named is as it should be.
    private IEnumerable<(Meaning Meaning, AnswerSource Source)> Answerable(NoteEvent found)
    {
        var ahead = Note.Conditions.Find(condition => condition.First >= found.Next && scene.InSentence(condition.First, found.First));
        var behind = Note.Conditions.Where(condition => condition.Next <= found.First).SelectMany(condition => condition.Meanings).TakeLast(MostBehind);
        var named = Note.Names.SelectMany(name => name.Meanings).Select(naming => naming.Check).Concat(Note.Open is { } open ? [open.Index] : []).Distinct()
            .Where(check => scene.Checks[check].FirstGood >= 0).Select(check => new Meaning(check, scene.Checks[check].FirstGood));
        return (ahead?.Meanings ?? []).Select(meaning => (meaning, AnswerSource.Ahead))
            .Concat(behind.Select(meaning => (meaning, AnswerSource.Behind)))
            .Concat(named.Select(meaning => (meaning, AnswerSource.FirstGood)));
    }
}
