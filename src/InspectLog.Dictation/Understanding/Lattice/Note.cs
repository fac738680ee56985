using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>What parts two places in a text, from nothing to a full stop.</summary>
internal enum Boundary
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A word that goes on: and, then, with.</summary>
    Join,

    /// <summary>The end of a clause.</summary>
    Clause,

    /// <summary>The end of a sentence.</summary>
    Sentence,
}

/// <summary>A text with all that its words can be: names, conditions, actions, everyday roles, numbers.</summary>
internal sealed partial class Note
{
    private readonly int[] _sentences;
    private readonly int[] _clauses;
    private readonly int[] _joins;
    private readonly bool[] _unknown;
    private readonly Dictionary<int, double> _talk = [];
    private readonly List<(int First, int Next)>[] _roles;

    public Note(SheetLexicon lexicon, string text, CheckEntry? open, WordFamiliarity words)
    {
        (Lexicon, Text, Open) = (lexicon, text, open);
        Tokens = lexicon.Language.Tokenizer.Cut(text);
        (_sentences, _clauses, _joins) = (new int[Tokens.Count + 1], new int[Tokens.Count + 1], new int[Tokens.Count + 1]);
        Part();
        var names = lexicon.Names.Cover(Tokens);
        var conditions = Spoken(lexicon.Conditions.Cover(Tokens), names);
        Names = [.. names.Where(name => !conditions.Exists(condition => condition.Holds(name)))];
        Conditions = [.. conditions.Where(condition => !Names.Exists(name => name.Holds(condition)))];
        Actions = [.. lexicon.Language.Actions.Cover(Tokens).Where(action => !conditions.Exists(condition => condition.Holds(action)) && !Names.Exists(name => name.Holds(action)))];
        PlaceNames = [.. lexicon.PlaceNames.Cover(Tokens).Where(place => !conditions.Exists(condition => condition.Holds(place)) && !Names.Exists(name => name.Holds(place)))];
        Quantifiers = lexicon.Language.Quantifiers.Cover(Tokens);
        _roles = Roles();
        Runs = new NumberRuns(lexicon, Tokens, Quantifiers).Find();
        RunsInList = [.. Runs.Select((_, index) => ListLength(index))];
        _unknown = Unknown(words);
        foreach (var heard in SoundAlikes.Of(this))
        {
            Names.AddRange(heard.Names);
            Conditions.AddRange(heard.Conditions);
        }

        Names.Sort((a, b) => a.First.CompareTo(b.First));
        Conditions.Sort((a, b) => a.First.CompareTo(b.First));
        Shape = Shapes();
    }

    public SheetLexicon Lexicon { get; }

    public string Text { get; }

    /// <summary>The check open on the bench; null where none is.</summary>
    public CheckEntry? Open { get; }

    public IReadOnlyList<Token> Tokens { get; }

    public int Length => Tokens.Count;

    /// <summary>Checks and parts that are named.</summary>
    public List<Phrase<Naming>> Names { get; }

    public List<Phrase<Meaning>> Conditions { get; }

    /// <summary>Places that go by name.</summary>
    public List<Phrase<int>> PlaceNames { get; }

    public List<Phrase<string>> Actions { get; }

    public List<Phrase<Quantifier>> Quantifiers { get; }

    public List<NumberRun> Runs { get; }

    /// <summary>For each run, how many runs stand in a list with it.</summary>
    public int[] RunsInList { get; }

    /// <summary>The tokens as features see them: numbers, names and conditions by their class, and nothing of the words of
    /// the trade; <see cref="WordIds.None"/> for the further tokens of a phrase.</summary>
    public int[] Shape { get; }

    /// <summary>How much the note sounds like talk: positive for talk.</summary>
    public double Talk { get; set; }

    /// <summary>How much the sentence around a token sounds like talk.</summary>
    public double TalkOf(int at) => _talk.GetValueOrDefault(SentenceOf(at));

    /// <summary>Sets how much a sentence sounds like talk.</summary>
    public void SetTalk(int sentence, double talk) => _talk[sentence] = talk;

    public int SentenceOf(int at) => _sentences[Math.Min(at, Length)];

    public int ClauseOf(int at) => _clauses[Math.Min(at, Length)];

    public bool IsUnknown(int at) => at >= 0 && at < Length && _unknown[at];

    public IReadOnlyList<(int First, int Next)> Of(SpeechRole role) => _roles[(int)role];

    public int Word(int at) => at < 0 ? WordIds.Start : at >= Length ? WordIds.End : Tokens[at].Word;

    public int ShapeAt(int at) => at < 0 ? WordIds.Start : at >= Length ? WordIds.End : Shape[at];

    public Boundary Between(int a, int b)
    {
        var (first, next) = a <= b ? (a, b) : (b, a);
        return _sentences[next] > _sentences[first] ? Boundary.Sentence
            : _clauses[next] > _clauses[first] ? Boundary.Clause
            : _joins[next] > _joins[first] ? Boundary.Join
            : Boundary.None;
    }

    private void Part()
    {
        var language = Lexicon.Language;
        for (var at = 0; at < Tokens.Count; at++)
        {
            var word = Tokens[at].Text;
            var ends = language.ClauseEnds.Contains(word);
            _sentences[at + 1] = _sentences[at] + (ends ? 1 : 0);
            _clauses[at + 1] = _clauses[at] + (ends || language.ClauseParts.Contains(word) ? 1 : 0);
            _joins[at + 1] = _joins[at] + (language.ClauseJoins.Contains(word) ? 1 : 0);
        }
    }

    // A word of praise means the good condition of what is named, and of nothing else.
    private List<Phrase<Meaning>> Spoken(List<Phrase<Meaning>> found, List<Phrase<Naming>> names)
    {
        var named = names.SelectMany(name => name.Meanings).Select(naming => naming.Check).ToHashSet();
        if (Open is not null)
        {
            named.Add(Open.Index);
        }

        var spoken = new List<Phrase<Meaning>>();
        foreach (var span in found)
        {
            var phrase = PhraseOf(span.First, span.Next);
            var kept = span.Meanings.Where(meaning => named.Contains(meaning.Check) || !Lexicon.IsGeneral(phrase, meaning.Check)).ToList();
            if (kept.Count > 0)
            {
                spoken.Add(kept.Count == span.Meanings.Count ? span : span with { Meanings = kept });
            }
        }

        return spoken;
    }

    /// <summary>The stems of some tokens with spaces between.</summary>
    public string PhraseOf(int first, int next) =>
        next - first == 1 ? Tokens[first].Stem : string.Join(' ', Enumerable.Range(first, next - first).Select(at => Tokens[at].Stem));

    private List<(int First, int Next)>[] Roles()
    {
        List<(int First, int Next)>[] roles = [.. Enum.GetValues<SpeechRole>().Select(_ => new List<(int First, int Next)>())];
        for (var at = 0; at < Length; at++)
        {
            if (Lexicon.Language.Roles.Longest(Tokens, at) is { } found)
            {
                foreach (var role in found.Meanings)
                {
                    roles[(int)role].Add((at, at + found.Length));
                }
            }
        }

        return roles;
    }

    private int ListLength(int index)
    {
        var (first, last) = (index, index);
        while (first > 0 && IsListed(Runs[first - 1].Next, Runs[first].First))
        {
            first--;
        }

        while (last + 1 < Runs.Count && IsListed(Runs[last].Next, Runs[last + 1].First))
        {
            last++;
        }

        return last - first + 1;
    }

    private bool IsListed(int first, int next) => Enumerable.Range(first, next - first)
        .All(at => Tokens[at].Kind == TokenKind.Mark && Tokens[at].Text is "," or "." || Lexicon.Language.ClauseJoins.Contains(Tokens[at].Text));
}
