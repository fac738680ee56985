using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Making;

/// <summary>What goes into an archive, decided before anything is written. Pure, but for looking whether files are there.</summary>
internal sealed class ArchiveContents
{
    private ArchiveContents(VehicleReading source, VehicleState whole, ArchiveProfile profile)
    {
        (Source, Profile) = (source, profile);
        NewlyWithheld = Withholding.Of(source.Entries, whole, profile);
        Entries = source.Entries.ConvertAll(entry => NewlyWithheld.Contains(entry.Sequence) ? WithoutBody(entry) : entry);
        Vehicle = Entries.Aggregate(VehicleState.Before(source.Id), (state, entry) => state.Apply(entry));
        VinEnding = profile.WithholdsPrivateFacts ? VehicleNumber.Ending(whole.Private?.Vin) : null;
        var named = Entries.SelectMany(NamedMedia.Of).DistinctBy(file => file.Sha256).ToList();
        Seals = SealFolder.Of(source.DataFolder, source.Id).Read();
        Withheld = [.. named.Where(IsWithheld)];
        Media = [.. named.Except(Withheld)];
        Sheets =
        [
            .. Entries.Select(entry => entry.Body).OfType<InspectionStarted>().DistinctBy(started => started.SheetSha256),
        ];
    }

    public VehicleReading Source { get; }

    public ArchiveProfile Profile { get; }

    /// <summary>The vehicle as the archive tells of it.</summary>
    public VehicleState Vehicle { get; }

    /// <summary>The entries as the archive has them.</summary>
    public ImmutableList<JournalEntry> Entries { get; }

    /// <summary>Entries that have a body here and none in the archive.</summary>
    public IReadOnlySet<long> NewlyWithheld { get; }

    /// <summary>Recordings and photos that go in as they are.</summary>
    public IReadOnlyList<MediaFile> Media { get; }

    /// <summary>Recordings and photos that are named and do not go in.</summary>
    public IReadOnlyList<MediaFile> Withheld { get; }

    /// <summary>Check sheets, by an inspection that pins each.</summary>
    public IReadOnlyList<InspectionStarted> Sheets { get; }

    /// <summary>The seals the vehicle has.</summary>
    public IReadOnlyList<KeptSeal> Seals { get; }

    /// <summary>The end of the vehicle number, where that is all that is given of it.</summary>
    public string? VinEnding { get; }

    /// <summary>Bytes to be written, as far as they are known.</summary>
    public long Size => Source.SoundBytes + Media.Sum(file => file.Bytes);

    /// <summary>Decides.</summary>
    /// <exception cref="ArchiveRefusedException">The record here is not whole.</exception>
    public static ArchiveContents Of(VehicleReading source, ArchiveProfile profile)
    {
        var whole = source.Entries.Aggregate(VehicleState.Before(source.Id), (state, entry) => state.Apply(entry));
        if (source.Broken is { } broken)
        {
            throw new ArchiveRefusedException(
                $"The journal of {whole.Name} is damaged at line {broken.Line}: {broken.Reason}. An archive of it would be damaged too. Put the journal back from a copy, and try again.");
        }

        if (source.Entries.IsEmpty)
        {
            throw new ArchiveRefusedException($"The journal of {source.Id} holds no entry, so there is nothing to give away.");
        }

        return new(source, whole, profile);
    }

    /// <summary>What is withheld here already stays so, but for what was found again.</summary>
    private bool IsWithheld(MediaFile file) =>
        (Profile.WithholdsRecordings && !IsPhoto(file))
        || (Profile.PhotosAreCopies && IsPhoto(file))
        || (!Source.Has(file.Sha256) && KnownWithheld(file.Sha256) is not null);

    /// <summary>What is known here of a file this journal came without.</summary>
    public WithheldMedia? KnownWithheld(string sha256) => Source.Withheld.FirstOrDefault(one => one.File.Sha256 == sha256);

    /// <summary>Whether a file is a photo.</summary>
    public static bool IsPhoto(MediaFile file) => file.Type.StartsWith("image/", StringComparison.Ordinal);

    private static JournalEntry WithoutBody(JournalEntry entry) => entry with { Body = null, UnreadBody = null, IsWithheld = true };
}
