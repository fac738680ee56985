using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>The notes to learn from, each looked up on its sheet, and the words that were met.</summary>
internal sealed class TrainingSet
{
    private readonly Dictionary<(string Sheet, int Cylinders), SheetLexicon?> _lexicons = [];
    private readonly IReadOnlyDictionary<string, CheckSheet> _more;
    private readonly Dictionary<int, int> _words = [];

    /// <param name="files">Files of the corpus.</param>
    /// <param name="sheets">Sheets beside those built in.</param>
    /// <param name="where">Which notes to take; null for all.</param>
    /// <param name="familiar">Which words are known; null for those that another of the notes has.</param>
    public TrainingSet(IEnumerable<string> files, IEnumerable<CheckSheet> sheets, Func<TrainingNote, bool>? where = null, WordFamiliarity? familiar = null)
    {
        _more = sheets.ToDictionary(sheet => sheet.Id);
        Meant = [.. files.SelectMany(file => TrainingNote.Load(file, Lexicon)).Where(note => where is null || where(note))];
        Parts = [.. Meant.Select(note => note.Part(Folds))];
        var words = Meant.Select(note => note.Findings.Count == 0 ? [] : Lexicon(note.Sheet, note.Cylinders)!.Language.Tokenizer.Cut(note.Text).Select(token => token.Word).ToHashSet()).ToList();
        foreach (var group in Enumerable.Range(0, Meant.Count).GroupBy(at => Meant[at].Base, StringComparer.Ordinal))
        {
            foreach (var word in group.SelectMany(at => words[at]).Distinct())
            {
                _words[word] = _words.GetValueOrDefault(word) + 1;
            }
        }

        Notes = [.. Meant.Select((note, at) => new Note(Lexicon(note.Sheet, note.Cylinders)!, note.Text, Open(note), familiar ?? new Others(_words, words[at])))];
    }

    /// <summary>Into how many parts the notes fall, each judged by what the others teach.</summary>
    public const int Folds = 5;

    public IReadOnlyList<TrainingNote> Meant { get; }

    public IReadOnlyList<Note> Notes { get; }

    public IReadOnlyList<int> Parts { get; }

    public IEnumerable<int> Words => _words.Keys;

    public int Count => Notes.Count;

    /// <summary>The words of a sheet; null where there is none of that id.</summary>
    public SheetLexicon? Lexicon(string id, int cylinders)
    {
        if (!_lexicons.TryGetValue((id, cylinders), out var lexicon))
        {
            var sheet = _more.GetValueOrDefault(id) ?? BuiltInSheets.Find(id);
            _lexicons[(id, cylinders)] = lexicon = sheet is null ? null : new(sheet.Fits(cylinders) ? sheet.For(cylinders) : sheet, [], SpokenLanguage.English);
        }

        return lexicon;
    }

    private CheckEntry? Open(TrainingNote note) => note.Open is null ? null : Lexicon(note.Sheet, note.Cylinders)!.Checks.FirstOrDefault(check => check.Check.Id == note.Open);

    // A word is familiar where another note has it, as it will be with notes nobody has learned from.
    private sealed class Others(Dictionary<int, int> words, HashSet<int> own) : WordFamiliarity
    {
        public override bool IsFamiliar(int word) => words.GetValueOrDefault(word) > (own.Contains(word) ? 1 : 0);
    }
}
