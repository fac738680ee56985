using System.Text.Json;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Erasing;

/// <summary>Finds what one journal holds of a person. Pure.</summary>
internal sealed class PersonInJournal
{
    private const string PrivateFacts = "private-facts"; // by its kind, so that those of a later version are found as well

    private static readonly Dictionary<string, HashSet<string>> WhoWorked = new(StringComparer.Ordinal)
    {
        ["inspection-started"] = ["technician"],
        ["access-given"] = ["person", "device"],
    };

    private static readonly HashSet<string> None = [];

    private readonly JournalToErase _journal;
    private readonly PersonWords _words;
    private readonly bool _asWorker;
    private readonly List<JsonElement?> _bodies;
    private readonly Dictionary<long, ErasedPart> _gone = [];
    private readonly HashSet<long> _restated = [];

    public PersonInJournal(JournalToErase journal, PersonWords words, bool asWorker)
    {
        (_journal, _words, _asWorker, _bodies) = (journal, words, asWorker, journal.Bodies());
        FindCaptures();
        FindRestated();
        FindSaidOfThem();
    }

    /// <summary>The entries whose bodies go.</summary>
    public IEnumerable<ErasedEntry> Gone => Listed(_gone.ContainsKey, entry => _gone[entry.Sequence]);

    /// <summary>The entries that are said again, with what they will say.</summary>
    public IEnumerable<(ErasedEntry Entry, JsonElement Says)> Restated => Listed(_restated.Contains, _ => ErasedPart.Mention)
        .Select(entry => (entry, _words.Without(_bodies[_journal.Entries.CountUpTo(entry.Sequence) - 1]!.Value, Skipped(entry.Kind))));

    /// <summary>The entries that will no longer say who made them.</summary>
    public IEnumerable<ErasedEntry> Nameless => _asWorker ? MadeByThem() : [];

    /// <summary>How many entries go on naming the person as who worked.</summary>
    public int Staying => _asWorker ? 0
        : _journal.Entries.Zip(_bodies).Count(pair => IsMadeByThem(pair.First) || (!_gone.ContainsKey(pair.First.Sequence) && NamesAsWorker(pair.First, pair.Second)));

    /// <summary>Tombstones of earlier erasures that name the person in what was written into them.</summary>
    public IEnumerable<long> TombstonesThatName =>
        _journal.Entries.Zip(_bodies).Where(pair => pair.First.Body is PersonErased && Names(pair.First, pair.Second)).Select(pair => pair.First.Sequence);

    private static HashSet<string> Worked(string kind) => WhoWorked.GetValueOrDefault(kind) ?? None;

    private HashSet<string> Skipped(string kind) => _asWorker ? None : Worked(kind);

    /// <summary>What is the person's own, or holds their voice or name where nobody can take it out.</summary>
    private void FindCaptures()
    {
        var leftOut = _journal.LeftOut().ToHashSet();
        var recordings = _journal.Entries.Where(entry => entry.Body is RecordingKept).Select(entry => entry.Sequence).ToHashSet();
        foreach (var (entry, body) in _journal.Entries.Zip(_bodies))
        {
            var capture = AboutCapture.Of(entry.Body) ?? entry.Sequence;
            if (entry.Kind == PrivateFacts && Names(entry, body))
            {
                _gone[entry.Sequence] = ErasedPart.OwnerFacts;
            }
            else if (recordings.Contains(capture) && (Names(entry, body) || (capture == entry.Sequence && IsMadeByThem(entry))))
            {
                _gone[capture] = ErasedPart.Recording;
            }
            else if (leftOut.Contains(capture) && (Names(entry, body) || (capture == entry.Sequence && IsMadeByThem(entry))))
            {
                _gone[capture] = ErasedPart.LeftOutOfReport;
            }
        }

        foreach (var entry in _journal.Entries.Where(entry => entry.IsWithheld && !entry.IsRestated))
        {
            _gone.Remove(entry.Sequence); // its body is gone already
        }
    }

    private void FindRestated()
    {
        foreach (var (entry, body) in _journal.Entries.Zip(_bodies))
        {
            if (!_gone.ContainsKey(entry.Sequence) && !IsOfWhatGoes(entry) && entry.Body is not PersonErased and not EntryRestated && Names(entry, body))
            {
                _restated.Add(entry.Sequence);
            }
        }
    }

    /// <summary>What says something of an entry that goes; and of a note that is said again, what was read of it: it tells words
    /// by their places.</summary>
    private void FindSaidOfThem()
    {
        foreach (var (entry, body) in _journal.Entries.Zip(_bodies))
        {
            if (body is not null && !_gone.ContainsKey(entry.Sequence)
                && (IsOfWhatGoes(entry) || (entry.Body is FindingsProposed or EntryRestated && _restated.Contains(AboutCapture.Of(entry.Body)!.Value))))
            {
                _gone[entry.Sequence] = ErasedPart.SaidOfIt;
                _restated.Remove(entry.Sequence);
            }
        }
    }

    private bool IsOfWhatGoes(JournalEntry entry) => AboutCapture.Of(entry.Body) is { } capture && _gone.ContainsKey(capture);

    private bool Names(JournalEntry entry, JsonElement? body) => body is { } says && _words.IsIn(says, Skipped(entry.Kind));

    private bool NamesAsWorker(JournalEntry entry, JsonElement? body) => body is { } says && WhoWorked.ContainsKey(entry.Kind)
        && _words.IsIn(says, None) && !_words.IsIn(says, Worked(entry.Kind));

    private bool IsMadeByThem(JournalEntry entry) => _words.Is(entry.Actor) || _words.IsIn(entry.Device);

    private IEnumerable<ErasedEntry> MadeByThem() => _journal.Entries.Where(IsMadeByThem).Select(entry => Of(entry, ErasedPart.Worker));

    private IEnumerable<ErasedEntry> Listed(Func<long, bool> which, Func<JournalEntry, ErasedPart> part) =>
        _journal.Entries.Where(entry => which(entry.Sequence)).Select(entry => Of(entry, part(entry)));

    private static ErasedEntry Of(JournalEntry entry, ErasedPart part) => new(entry.Sequence, entry.LocalTime, entry.Kind, part);
}
