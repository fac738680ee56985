using InspectLog.Journal.Entries;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <content>Carrying out an erasure that was decided, and ending one that was broken off.</content>
public sealed partial class Garage
{
    private void Carry(Author by, ErasureRequest request, Found found)
    {
        var pending = new PendingErasure(Folder, _durable);
        try
        {
            pending.TakeBack();
            Stage(pending, by, request, found);
        }
        catch (Exception cause) when (DiskFailure.Is(cause) && !PendingErasure.IsIn(Folder))
        {
            pending.TakeBack();
            throw new ErasureRefusedException($"Nothing was erased: the journals could not be written anew ({cause.Message}). Free some space or look after the disk, and erase again.");
        }
        catch (Exception cause) when (DiskFailure.Is(cause))
        {
            throw BrokenOff(cause);
        }

        _index.BringInAll(); // what waits may have to be read from files that are written anew now
        try
        {
            pending.Finish(() =>
            {
                AllJournals().ForEach(journal => journal.ReadAnew());
                _cache.Clear();
                _contents.Clear();
                _index.Rebuild();
            });
        }
        catch (Exception cause) when (DiskFailure.Is(cause))
        {
            throw BrokenOff(cause);
        }

        ForgetWithheld();
    }

    private void Stage(PendingErasure pending, Author by, ErasureRequest request, Found found)
    {
        var now = _time.GetLocalNow();
        var media = found.Plan.Journals.SelectMany(one => one.Media).Select(file => file.Sha256).ToHashSet(StringComparer.Ordinal);
        var copies = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (journal, person, listed) in found.Journals.Where(one => one.Listed.IsConcerned))
        {
            IReadOnlyList<EntryBody> further = journal.VehicleId is null && request.AsWorker
                ? [.. _workshop.Now.State.Accesses.Where(access => access.Withdrawn is null && found.Words.Is(access.Given.Person)).Select(access => new AccessWithdrawn(access.Number))]
                : [];
            pending.Stage(journal.Path, ErasedJournal.Write(journal, person, request, listed.Media.Count, further, by, now));
            copies.UnionWith(StageWithheld(pending, journal, media));
        }

        var staying = found.Journals.SelectMany(one => one.Journal.Entries.Where(entry => !one.Listed.Gone.Any(gone => gone.Sequence == entry.Sequence)))
            .SelectMany(NamedMedia.Of).Select(file => file.Sha256);
        pending.Decide(media.Union(copies.Except(staying)), SetAsideWith(found.Words));
    }

    /// <summary>Takes what goes out of the list of what a journal came without; gives the copies that go with it.</summary>
    private IEnumerable<string> StageWithheld(PendingErasure pending, JournalToErase journal, HashSet<string> media)
    {
        if (journal.VehicleId is not { } id || WithheldMediaList.In(_folder.Vehicle(id)) is not { Count: > 0 } before || !before.Any(one => media.Contains(one.File.Sha256)))
        {
            return [];
        }

        List<WithheldMedia> left = [.. before.Where(one => !media.Contains(one.File.Sha256))];
        pending.Stage($"{DataFolder.VehiclesName}/{id}/{WithheldMediaList.FileName}", left.Count == 0 ? null : WithheldMediaList.Write(left));
        return before.Except(left).Select(one => one.Copy?.Sha256).OfType<string>().Except(left.Select(one => one.Copy?.Sha256).OfType<string>());
    }

    private IEnumerable<string> SetAsideWith(PersonWords words) => Directory.Exists(_folder.SetAside)
        ? Directory.EnumerateFiles(_folder.SetAside, "*", SearchOption.AllDirectories).Where(file => words.IsIn(File.ReadAllBytes(file)))
            .Select(file => Path.GetRelativePath(Folder, file).Replace(Path.DirectorySeparatorChar, '/'))
        : [];

    /// <summary>What is in memory is no longer what is on disk, so nothing more is written until the next start.</summary>
    private IOException BrokenOff(Exception cause)
    {
        foreach (var latch in AllJournals().Select(journal => journal.Latch))
        {
            try
            {
                latch.Guard(() => throw new IOException(cause.Message, cause));
            }
            catch (JournalReadOnlyException)
            {
                // That is what it is for.
            }
        }

        return new($"The erasure was begun and could not be ended ({cause.Message}). Start InspectLog again on this folder: it is gone on with then. Until that nothing can be recorded.", cause);
    }

    private void ForgetWithheld() => _withheld = _vehicles.Keys
        .SelectMany(id => WithheldMediaList.In(_folder.Vehicle(id)))
        .Aggregate(_withheld.Clear(), (all, one) => all.SetItem(one.File.Sha256, one));

    /// <summary>Ends an erasure that was begun, before anything is read; says so.</summary>
    private static GarageProblem? EndErasure(DataFolder folder, IDurable durable, bool isLookedAtOnly)
    {
        var pending = new PendingErasure(folder.Root, durable);
        if (!PendingErasure.IsIn(folder.Root))
        {
            if (!isLookedAtOnly)
            {
                pending.TakeBack();
            }

            return null;
        }

        if (isLookedAtOnly)
        {
            return new(ReadOnly: false, "The erasing of a person's data was begun in this folder and is not done: some of it may still be here. Start InspectLog on the folder itself, without --read-only, and it is gone on with.");
        }

        try
        {
            pending.Finish(pending.DeleteIndex);
        }
        catch (InvalidDataException damaged)
        {
            return new(ReadOnly: false, damaged.Message); // the journals are each as they were or as they were to be
        }

        return new(ReadOnly: false, "The program stopped while a person's data were being erased. That was gone on with at this start and is done.");
    }
}
