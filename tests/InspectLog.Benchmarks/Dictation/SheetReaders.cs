using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>A reader for each sheet, with as many cylinders, that notes of the corpus are said with.</summary>
internal sealed class SheetReaders
{
    private readonly Dictionary<(string Sheet, int Cylinders), FindingReader> _readers = [];

    /// <summary>What a note is read as, with its sheet.</summary>
    public IReadOnlyList<Finding> Read(Utterance note)
    {
        if (!_readers.TryGetValue((note.Sheet, note.Cylinders), out var reader))
        {
            var sheet = BuiltInSheets.Find(note.Sheet) ?? throw new ScoringException($"There is no sheet {note.Sheet}, which {note.Id} is said with.");
            _readers[(note.Sheet, note.Cylinders)] = reader = new(sheet.Fits(note.Cylinders) ? sheet.For(note.Cylinders) : sheet);
        }

        return reader.Read(note.Text, note.OpenCheck);
    }
}
