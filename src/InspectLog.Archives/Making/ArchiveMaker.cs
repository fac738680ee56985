using InspectLog.Archives.BagIt;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Making;

/// <summary>Makes the archive of a vehicle: a bag (RFC 8493) of its journal, its recordings and photos, the very sheets used, and
/// what people read. The garage may be in use meanwhile: the journal is read once, and media never change.</summary>
/// <param name="readable">Makes what people read.</param>
/// <param name="copies">Makes clean copies of photos.</param>
/// <param name="builtInSheet">The file of a sheet the program has built in, by its SHA-256; null where it has none.</param>
/// <param name="time">The clock.</param>
public sealed class ArchiveMaker(
    IReadableParts readable, ICleanCopies copies, Func<string, ReadOnlyMemory<byte>?> builtInSheet, TimeProvider time)
{
    private const int Piece = 1 << 18;

    /// <summary>Makes an archive.</summary>
    /// <param name="source">The vehicle's record.</param>
    /// <param name="profile">What of it is given.</param>
    /// <param name="begin">Begins a bag of a name, made on a day.</param>
    /// <param name="sealing">What it is sealed with; null leaves it unsealed, with the seals the vehicle has.</param>
    /// <param name="progress">Is told how far it is.</param>
    /// <param name="stop">Gives it up; then nothing is left of it.</param>
    /// <returns>Where it is.</returns>
    /// <exception cref="ArchiveRefusedException">The record here is not whole; the message says what to do.</exception>
    /// <exception cref="IOException">Something could not be read or written.</exception>
    public async Task<string> MakeAsync(
        VehicleReading source,
        ArchiveProfile profile,
        Func<string, DateOnly, IBagTarget> begin,
        ArchiveSealing? sealing = null,
        IProgress<ArchiveProgress>? progress = null,
        CancellationToken stop = default)
    {
        var contents = ArchiveContents.Of(source, profile);
        SealedBag.ThrowIfNotKept(contents);
        var today = DateOnly.FromDateTime(time.GetLocalNow().Date);
        using var target = begin(NameOf(source.Id, profile, today), today);
        using var pictures = new Pictures(contents, copies);
        var bag = new BagWriter(target);
        await bag.AddTagAsync(BagDeclaration.FileName, BagDeclaration.Bytes).ConfigureAwait(false);
        await AddJournalAsync(bag, contents, stop).ConfigureAwait(false);
        await AddSheetsAsync(bag, contents).ConfigureAwait(false);
        await AddMediaAsync(bag, contents, progress, stop).ConfigureAwait(false);
        await AddWithheldAsync(bag, contents, pictures, stop).ConfigureAwait(false);
        foreach (var part in readable.Of(new(contents.Vehicle, contents.Entries, source, pictures.OfAsync)))
        {
            await bag.AddAsync(part.Path, null, to => part.WriteAsync(to, stop)).ConfigureAwait(false);
        }

        await bag.AddTagAsync(BagInfo.FileName, ArchiveDescription.Info(contents, bag.Oxum, today).Write()).ConfigureAwait(false);
        await bag.AddTagAsync(ArchiveDescription.FileName, ArchiveDescription.Text(contents, isSealed: sealing is not null)).ConfigureAwait(false);
        await SealedBag.AddAsync(bag, contents, await bag.AddManifestAsync().ConfigureAwait(false), sealing).ConfigureAwait(false);
        await bag.FinishAsync().ConfigureAwait(false);
        stop.ThrowIfCancellationRequested();
        return target.Complete();
    }

    private static string NameOf(string vehicle, ArchiveProfile profile, DateOnly today) =>
        FormattableString.Invariant($"{vehicle}-{today:yyyy-MM-dd}") + (profile == ArchiveProfiles.Everything ? "" : $"-{profile.Id}");

    private static Task AddJournalAsync(BagWriter bag, ArchiveContents contents, CancellationToken stop) => bag.AddAsync(
        ArchiveLayout.Journal,
        contents.NewlyWithheld.Count == 0 ? contents.Source.SoundBytes : null,
        async to =>
        {
            foreach (var (line, entry) in contents.Source.Lines().Zip(contents.Entries))
            {
                stop.ThrowIfCancellationRequested();
                await to.WriteAsync(contents.NewlyWithheld.Contains(entry.Sequence) ? JournalLines.WithoutBody(line) : line, stop).ConfigureAwait(false);
                to.WriteByte((byte)'\n');
            }
        });

    private async Task AddSheetsAsync(BagWriter bag, ArchiveContents contents)
    {
        foreach (var pinned in contents.Sheets)
        {
            var sheet = contents.Source.Sheets.Read(pinned.SheetSha256) ?? builtInSheet(pinned.SheetSha256)
                ?? throw new ArchiveRefusedException(
                    $"The check sheet {pinned.Sheet}, version {pinned.SheetVersion}, which an inspection was made with, is not there. "
                    + $"Put its file {pinned.SheetSha256}.json back into the folder {contents.Source.Sheets.Folder} from a copy, and try again.");
            await bag.AddAsync(ArchiveLayout.Sheet(pinned.SheetSha256), sheet.Length, to => to.WriteAsync(sheet).AsTask()).ConfigureAwait(false);
        }
    }

    private static async Task AddMediaAsync(
        BagWriter bag, ArchiveContents contents, IProgress<ArchiveProgress>? progress, CancellationToken stop)
    {
        var done = contents.Source.SoundBytes;
        foreach (var file in contents.Media)
        {
            var from = await contents.Source.OpenAsync(file.Sha256, stop).ConfigureAwait(false) ?? throw NotWhole(file);
            await using (from.ConfigureAwait(false))
            {
                var sha256 = from.Length == file.Bytes
                    ? await bag.AddAsync(ArchiveLayout.Media(file), file.Bytes, to => from.CopyToAsync(to, Piece, stop)).ConfigureAwait(false)
                    : null;
                if (sha256 != file.Sha256)
                {
                    throw NotWhole(file);
                }
            }

            progress?.Report(new(done += file.Bytes, contents.Size));
        }
    }

    private static ArchiveRefusedException NotWhole(MediaFile file) => new(
        $"The {(ArchiveContents.IsPhoto(file) ? "photo" : "recording")} {file.Sha256} is missing or damaged, and an archive without it would not be whole. "
        + "Put it back into the media folder from a copy, and try again.");

    private static async Task AddWithheldAsync(BagWriter bag, ArchiveContents contents, Pictures pictures, CancellationToken stop)
    {
        var withheld = new List<WithheldMedia>();
        foreach (var file in contents.Withheld)
        {
            var copy = ArchiveContents.IsPhoto(file) ? await pictures.OfAsync(file.Sha256, stop).ConfigureAwait(false) : null;
            var sha256 = copy is null ? null
                : await bag.AddAsync(ArchiveLayout.Copy(file), copy.Length, to => to.WriteAsync(copy, stop).AsTask()).ConfigureAwait(false);
            withheld.Add(new(file, sha256 is null ? null : new(sha256, copy!.Length, "image/jpeg")));
        }

        if (withheld.Count > 0)
        {
            var list = WithheldMediaList.Write(withheld);
            await bag.AddAsync(ArchiveLayout.Withheld, list.Length, to => to.WriteAsync(list, stop).AsTask()).ConfigureAwait(false);
        }
    }
}
