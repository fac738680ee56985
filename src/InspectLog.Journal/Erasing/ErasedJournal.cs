using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Erasing;

/// <summary>Writes a journal without a person: the lines with what goes taken out, and after them the tombstone and what is said
/// again. Every hash stays, so that seals and notes of the journal hold. Pure but for the salts.</summary>
internal static class ErasedJournal
{
    /// <summary>The bytes.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="found">What it holds of the person.</param>
    /// <param name="request">Who asked, and why.</param>
    /// <param name="media">How many recordings and photos of it go.</param>
    /// <param name="further">Entries to follow.</param>
    /// <param name="by">Who does it.</param>
    /// <param name="now">When.</param>
    public static byte[] Write(
        JournalToErase journal,
        PersonInJournal found,
        ErasureRequest request,
        int media,
        IReadOnlyList<EntryBody> further,
        Author by,
        DateTimeOffset now)
    {
        var restated = found.Restated.ToList();
        var bodies = found.Gone.Concat(restated.Select(one => one.Entry)).Select(entry => entry.Sequence).ToHashSet();
        var names = found.Nameless.Select(entry => entry.Sequence).ToHashSet();
        var nameless = new List<NamelessEntry>();
        using var bytes = new MemoryStream();
        foreach (var (line, entry) in journal.Lines().Zip(journal.Entries))
        {
            var left = bodies.Contains(entry.Sequence) ? EntryLine.WithoutBody(line) : line;
            if (names.Contains(entry.Sequence))
            {
                (left, var rest) = EntryLine.WithoutActor(left);
                nameless.Add(new(entry.Sequence, rest));
            }

            bytes.Write(left.Span);
            bytes.WriteByte((byte)'\n');
        }

        var tombstone = new PersonErased(request.AskedBy, request.Reason, Runs(bodies.Order()), media) { Nameless = nameless.Count > 0 ? nameless : null };
        bytes.Write(NewEntries.Of(by, [tombstone, .. restated.Select(one => new EntryRestated(one.Entry.Sequence, one.Says)), .. further], journal.Entries, now).Bytes);
        return bytes.ToArray();
    }

    private static List<IReadOnlyList<long>> Runs(IEnumerable<long> rising)
    {
        var runs = new List<IReadOnlyList<long>>();
        foreach (var sequence in rising)
        {
            if (runs is [.., [var first, var last]] && last + 1 == sequence)
            {
                runs[^1] = [first, sequence];
            }
            else
            {
                runs.Add([sequence, sequence]);
            }
        }

        return runs;
    }
}
