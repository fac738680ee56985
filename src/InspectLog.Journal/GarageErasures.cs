using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <content>Erasing what is known of one person.</content>
public sealed partial class Garage
{
    /// <summary>The names that owners, contacts and workers have in the journals, those of devices' owners among them.</summary>
    public IReadOnlyList<string> PeopleNamed() =>
        [.. Named(_vehicles.Values.SelectMany(journal => journal.Now.Entries).Concat(_workshop.Now.Entries)).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Lists what would go if a person was erased. Nothing is changed.</summary>
    /// <param name="person">The person's name.</param>
    /// <param name="asWorker">Whether the name goes as well where it says who worked.</param>
    /// <exception cref="ErasureRefusedException">There is nobody of that name, or a journal is damaged.</exception>
    public ErasurePlan PlanErasure(string person, bool asWorker) => WhileHeld(() => Search(person, asWorker).Plan);

    /// <summary>Erases what is known of a person: bodies, salts, recordings, photos and their copies, and whatever is made of them.
    /// When this returns it is gone from the data folder, and tombstones say that something was.</summary>
    /// <param name="by">Who does it; not the person.</param>
    /// <param name="request">Who asked, and why.</param>
    /// <param name="mark">The mark of the plan that was confirmed; null takes whatever there is now.</param>
    /// <returns>What was erased.</returns>
    /// <exception cref="ErasureRefusedException">Nothing was erased; the message says why.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    /// <exception cref="IOException">It was begun and could not be ended; the next start ends it.</exception>
    public ErasurePlan Erase(Author by, ErasureRequest request, string? mark = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        return WhileHeld(() =>
        {
            _latches.Gate.ThrowIfClosed();
            var found = Search(request.Person, request.AsWorker);
            ThrowIfUnfit(by, request, mark, found);
            Carry(by, request, found);
            return found.Plan with { Backups = BackupsWith(found) };
        });
    }

    private T WhileHeld<T>(Func<T> act)
    {
        lock (_adding)
        {
            var held = AllJournals();
            held.ForEach(journal => journal.Hold());
            try
            {
                return act();
            }
            finally
            {
                held.ForEach(journal => journal.Release());
            }
        }
    }

    private sealed record Found(ErasurePlan Plan, PersonWords Words, IReadOnlyList<(JournalToErase Journal, PersonInJournal Person, JournalErasure Listed)> Journals);

    /// <summary>Those of the vehicles first: a closing holds a vehicle's journal while it looks at the workshop's.</summary>
    private List<IHeldJournal> AllJournals() =>
        [.. _vehicles.OrderBy(vehicle => vehicle.Key, StringComparer.Ordinal).Select(vehicle => vehicle.Value), _workshop];

    private List<JournalToErase> LookedThrough() =>
    [
        .. _vehicles.OrderBy(vehicle => vehicle.Key, StringComparer.Ordinal).Select(vehicle => new JournalToErase(
            vehicle.Key, vehicle.Value.Now.State.Name, $"{DataFolder.VehiclesName}/{vehicle.Key}/{DataFolder.JournalName}", vehicle.Value.Bytes(), [.. vehicle.Value.Now.Entries], vehicle.Value.Now.State)),
        new(null, "the workshop", "workshop.jsonl", _workshop.Bytes(), [.. _workshop.Now.Entries], null),
    ];

    private Found Search(string person, bool asWorker)
    {
        if (_vehicles.Values.Select(journal => (journal.Damage, Name: journal.Now.State.Name)).Append((_workshop.Damage, Name: "the workshop")).FirstOrDefault(one => one.Damage is not null) is { Damage: not null } damaged)
        {
            throw new ErasureRefusedException($"Nothing was erased: the journal of {damaged.Name} is damaged, so that nobody can say what else it holds. Put it back from a copy first.");
        }

        var journals = LookedThrough();
        var byName = new PersonWords(person, []);
        var facts = journals.SelectMany(journal => journal.Entries).Select(entry => entry.Body).OfType<PrivateFactsNoted>()
            .Where(noted => byName.Is(noted.Owner) || byName.IsNamedIn(noted.Contact)).ToList();
        if (!byName.Name.Any(char.IsLetter) || byName.Is(JournalEntry.Program) || byName.Is(Erased.Name) || (facts.Count == 0 && !Named(journals.SelectMany(journal => journal.Entries)).Any(byName.Is)))
        {
            throw new ErasureRefusedException($"Nothing was erased: nobody called \"{byName.Name}\" is an owner, a contact or a worker here. Write the name as it stands in the journals.");
        }

        var words = new PersonWords(person, facts.Select(noted => noted.Contact));
        var found = journals.ConvertAll(journal => (Journal: journal, Person: new PersonInJournal(journal, words, asWorker)));
        var (gone, shared) = MediaOf(found);
        var listed = found.ConvertAll(one => (one.Journal, one.Person, Listed: Listed(one.Journal, one.Person, gone)));
        var plan = new ErasurePlan(
            words.Name,
            [.. listed.Select(one => one.Listed).Where(one => one.IsConcerned || one.Staying > 0)],
            shared,
            [],
            [.. Remarks(words, found)],
            MarkOf(listed.Select(one => (one.Journal.Entries.Count, one.Listed))));
        var all = new Found(plan, words, listed);
        return all with { Plan = plan with { Backups = BackupsWith(all) } };
    }

    private static IEnumerable<string> Named(IEnumerable<JournalEntry> entries) => entries
        .SelectMany(entry => entry.Body switch
        {
            PrivateFactsNoted noted => new[] { entry.Actor, noted.Owner },
            InspectionStarted started => [entry.Actor, started.Technician],
            AccessGiven given => [entry.Actor, given.Person],
            _ => [entry.Actor],
        })
        .Where(name => name is not (JournalEntry.Program or Erased.Name or ""));

    /// <summary>The recordings and photos that go, and those that stay as an entry that stays names them too.</summary>
    private static (HashSet<string> Gone, IReadOnlyList<MediaFile> Shared) MediaOf(List<(JournalToErase Journal, PersonInJournal Person)> found)
    {
        var going = new List<MediaFile>();
        var staying = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (journal, person) in found)
        {
            var gone = person.Gone.Select(entry => entry.Sequence).ToHashSet();
            going.AddRange(journal.Entries.Where(entry => gone.Contains(entry.Sequence)).SelectMany(NamedMedia.Of));
            staying.UnionWith(journal.Entries.Where(entry => !gone.Contains(entry.Sequence)).SelectMany(NamedMedia.Of).Select(file => file.Sha256));
        }

        return ([.. going.Select(file => file.Sha256).Except(staying)], [.. going.Where(file => staying.Contains(file.Sha256)).DistinctBy(file => file.Sha256)]);
    }

    private static JournalErasure Listed(JournalToErase journal, PersonInJournal person, HashSet<string> media)
    {
        var gone = person.Gone.ToList();
        var sequences = gone.Select(entry => entry.Sequence).ToHashSet();
        return new(
            journal.VehicleId,
            journal.Name,
            gone,
            [.. person.Restated.Select(one => one.Entry)],
            [.. person.Nameless],
            person.Staying,
            [.. journal.Entries.Where(entry => sequences.Contains(entry.Sequence)).SelectMany(NamedMedia.Of).Where(file => media.Contains(file.Sha256)).DistinctBy(file => file.Sha256)]);
    }

    private static IEnumerable<string> Remarks(PersonWords words, List<(JournalToErase Journal, PersonInJournal Person)> found)
    {
        var spelled = VehicleIds.New(words.Name, _ => false);
        foreach (var (journal, person) in found)
        {
            if (journal.VehicleId is { } id && $"-{id}-".Contains($"-{spelled}-", StringComparison.Ordinal))
            {
                yield return $"The folder of the vehicle is called {id} after its first name, and stays so: every address and every note of the workshop's journal names it.";
            }

            foreach (var tombstone in person.TombstonesThatName)
            {
                yield return $"Entry {tombstone} of {journal.Name}, the tombstone of an earlier erasure, names the person as who asked or why, and stays.";
            }
        }
    }

    private static string MarkOf(IEnumerable<(int Entries, JournalErasure Listed)> journals)
    {
        var text = string.Join('\n', journals.Where(one => one.Listed.IsConcerned).Select(one => FormattableString.Invariant(
            $"{one.Listed.VehicleId} {string.Join(',', one.Listed.Gone.Concat(one.Listed.Restated).Select(entry => entry.Sequence))} {string.Join(',', one.Listed.Nameless.Select(entry => entry.Sequence))}")));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

    private IReadOnlyList<KnownBackup> BackupsWith(Found found) => KnownBackup.Of(
        Folder,
        [.. found.Journals.Where(one => one.Listed.IsConcerned).Select(one => (one.Journal.Path, (IReadOnlyList<long>)[.. one.Listed.Gone.Concat(one.Listed.Restated).Select(entry => entry.Sequence)]))],
        [.. found.Plan.Journals.SelectMany(one => one.Media).Select(file => file.Sha256)]);

    private void ThrowIfUnfit(Author by, ErasureRequest request, string? mark, Found found)
    {
        if (found.Plan.IsEmpty)
        {
            throw new ErasureRefusedException($"Nothing was erased: nothing but the name of who worked is known of {found.Plan.Person}, and that stays unless it is asked for ({found.Plan.Staying} entries).");
        }

        if (mark is not null && mark != found.Plan.Mark)
        {
            throw new ErasureRefusedException("Nothing was erased: something was recorded since the list was made. Look at the list again.");
        }

        if (found.Words.IsIn(by.Name) || found.Words.IsIn(by.Device))
        {
            throw new ErasureRefusedException("Nothing was erased: the entry that says so would name the person again as who did it. Have somebody else do it, or give another name as yours.");
        }

        if (found.Words.IsIn(request.AskedBy) || found.Words.IsIn(request.Reason) || string.IsNullOrWhiteSpace(request.AskedBy) || string.IsNullOrWhiteSpace(request.Reason))
        {
            throw new ErasureRefusedException("Nothing was erased: say who asked and why, without naming the person, since both stay in the journals.");
        }

        foreach (var problem in AllJournals().Select(journal => journal.FailedWrite).OfType<GarageProblem>())
        {
            throw new JournalReadOnlyException(problem.Message);
        }
    }
}
