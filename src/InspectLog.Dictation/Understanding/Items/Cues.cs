using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Follows the cues of a sentence as far as they reach: "I'll", "last year", "the manual says".</summary>
internal sealed class Cues(Sentence sentence)
{
    private static readonly PhraseTable<CueReach> Table = CueTable();

    private readonly IReadOnlyList<Token> _tokens = sentence.Tokens;

    /// <summary>The stretches that the cues say are no findings.</summary>
    public IEnumerable<(int From, int To)> Stretches()
    {
        var known = sentence.First;
        for (var at = sentence.First; at < sentence.Next; at++)
        {
            // A cue inside a longer phrase that is known ("right at the limit") is no cue.
            var phrase = sentence.Phrases.Match(at)?.Length ?? 0;
            if (CueAt(at) is { } cue && cue.Length >= phrase && at + cue.Length > known)
            {
                yield return Reached(cue.Reach, at, at + cue.Length);
            }

            known = Math.Max(known, at + phrase);
        }
    }

    private (int Length, CueReach Reach)? CueAt(int at) =>
        _tokens[at].Text == "'ll" ? (1, CueReach.Forward)
        : ReadsOff(at) || Tries(at) ? null
        : Years.Length(_tokens, at) is > 0 and var year ? (year, CueReach.Clause)
        : Table.Match(_tokens, at) is { } cue ? (cue.Length, cue.Meanings[0])
        : null;

    // "It says twelve point one": what an instrument says is what it shows.
    private bool ReadsOff(int at) =>
        _tokens[at].IsWord("say") && at > sentence.First && at + 1 < sentence.Next && sentence.NumberAt(at + 1)
        && (_tokens[at - 1].Stem is "it" or "meter" or "multimeter"
            || Enumerable.Range(sentence.ClauseStart(at), at - sentence.ClauseStart(at)).Any(word => _tokens[word].Stem is "strobe" or "gauge" or "meter" or "tester"));

    // "Could get the point three in", "can't get point four in": what was tried with a gauge.
    private bool Tries(int at)
    {
        if (_tokens[at].Stem is not ("could" or "can" or "get"))
        {
            return false;
        }

        var number = at + 1;
        while (number < sentence.Next && _tokens[number].Stem is "not" or "just" or "only" or "get" or "the" or "a" or "my")
        {
            number++;
        }

        return number < sentence.Next && sentence.NumberAt(number)
            && Enumerable.Range(number, sentence.Next - number).Any(i => _tokens[i].IsWord("in"));
    }

    private (int From, int To) Reached(CueReach reach, int at, int after) => reach switch
    {
        CueReach.Forward => (at, sentence.VerblessEnd(after)),
        CueReach.Looking => (at, sentence.ClauseEnd(after)),
        CueReach.Clause => (sentence.ClauseStart(at), sentence.ClauseEnd(after)),
        CueReach.Story => (sentence.ClauseStart(at), StoryEnd(sentence.ClauseEnd(after))),
        _ => (sentence.ClauseStart(at), sentence.Next),
    };

    // "We did one yesterday, all six were chafed": on while it tells how things were.
    private int StoryEnd(int end)
    {
        while (end < sentence.Next && _tokens[end].IsMark(',') && sentence.ClauseEnd(end + 1) is var next && IsOfThen(end + 1, next))
        {
            end = next;
        }

        return end;
    }

    private bool IsOfThen(int from, int to)
    {
        var words = Enumerable.Range(from, to - from).Select(at => _tokens[at].Text).ToList();
        return words.Exists(word => word is "was" or "were" or "had") && !words.Exists(word => word is "now" or "today" or "is" or "are" or "'s" or "here" or "this");
    }

    private static PhraseTable<CueReach> CueTable()
    {
        var table = new PhraseTable<CueReach>();
        foreach (var (reach, phrase) in NonFindingCues.All)
        {
            table.Add(phrase, reach);
        }

        return table;
    }
}
