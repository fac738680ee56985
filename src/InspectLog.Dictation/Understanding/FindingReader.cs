using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Dictation.Understanding.Writing;

namespace InspectLog.Dictation.Understanding;

/// <summary>Reads findings from a text, by a grammar driven by the check sheet. Pure: the same text always gives the
/// same findings.</summary>
public sealed class FindingReader
{
    private readonly Lexicon _lexicon;
    private readonly OwnNames _ownNames;
    private readonly Topics _topics;
    private readonly Lazy<SoundLexicon> _sounds;
    private readonly LikeSounding _alike;

    /// <summary>A reader for one sheet. It can be shared between threads.</summary>
    /// <param name="sheet">The sheet whose checks are spoken of.</param>
    /// <param name="ownWords">The workshop's own words; one whose check or condition the sheet does not have says
    /// nothing.</param>
    public FindingReader(CheckSheet sheet, IReadOnlyList<OwnWord>? ownWords = null)
    {
        Sheet = sheet;
        OwnWords = ownWords ?? [];
        _lexicon = new(sheet, OwnWords);
        _ownNames = new(sheet, OwnWords);
        _topics = new(sheet);
        _sounds = new(() => new(sheet));
        _alike = new(sheet, _lexicon, _sounds);
    }

    /// <summary>The sheet it reads for.</summary>
    public CheckSheet Sheet { get; }

    /// <summary>The workshop's own words it knows.</summary>
    public IReadOnlyList<OwnWord> OwnWords { get; }

    /// <summary>The findings of a text, in the order spoken.</summary>
    /// <param name="text">What was said or heard.</param>
    /// <param name="openCheck">Id of the check open on the bench, which a text that names none may mean; or null.</param>
    public IReadOnlyList<Finding> Read(string text, string? openCheck = null) => Read(_alike.Take(Cut(text)), text, openCheck);

    /// <summary>The findings of what was heard. Beyond those of its text, a word the speech model was unsure of is
    /// marked, and an order is taken for what was done where one lost sound is the difference.</summary>
    /// <param name="transcript">What was heard.</param>
    /// <param name="openCheck">Id of the check open on the bench; or null.</param>
    public IReadOnlyList<Finding> Read(Transcript transcript, string? openCheck = null) =>
        UnclearWords.Mark(Read(_alike.TakeHeard(Cut(transcript.Text)), transcript.Text, openCheck), transcript.Words);

    private IReadOnlyList<Token> Cut(string text) => _ownNames.Replace(FalseStarts.Drop(Hesitations.Drop(Tokenizer.Cut(text))));

    private IReadOnlyList<Finding> Read(TakenText taken, string text, string? openCheck)
    {
        var open = openCheck is null ? null : Sheet.Find(openCheck);
        var repair = new SoundRepair(new(_sounds), _lexicon, tokens => Read(tokens, text, open));
        return new NotUnderstood(repair.Read(taken.Tokens), taken.HeardAs).Mark();
    }

    private TextReading Read(IReadOnlyList<Token> tokens, string text, Check? open)
    {
        var numbers = new NumberLookup(tokens);
        var items = new ItemReader(new PhraseLookup(_lexicon, tokens), numbers);
        var frames = new FrameBuilder(Sheet, _lexicon, _topics, numbers, open);
        var clauses = new Clauses(numbers, _lexicon);
        var words = new WordReading[tokens.Count];
        foreach (var (first, next) in Sentences(tokens))
        {
            var sentence = items.Read(first, next);
            foreach (var item in sentence.Where(item => tokens[item.First].Kind != TokenKind.Mark))
            {
                Array.Fill(words, item.Word, item.First, item.Next - item.First);
            }

            foreach (var clause in clauses.Of(sentence))
            {
                frames.Add(clause);
            }
        }

        return new(new FindingWriter(Sheet, _lexicon, _topics, tokens, text, open).Write(frames.Frames), words);
    }

    private static IEnumerable<(int First, int Next)> Sentences(IReadOnlyList<Token> tokens)
    {
        var first = 0;
        for (var at = 0; at < tokens.Count; at++)
        {
            if (tokens[at].EndsSentence)
            {
                yield return (first, at + 1);
                first = at + 1;
            }
        }

        if (first < tokens.Count)
        {
            yield return (first, tokens.Count);
        }
    }
}
