using InspectLog.App.Media;
using InspectLog.Archives.Making;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>Clean copies of photos: those the data folder keeps, as far as they fit their originals, and others made anew.</summary>
internal sealed class KeptOrMade(CopyFiles kept, VehicleReading source, ReadableRecord record)
{
    /// <summary>The copy of a photo; null where it cannot be shown.</summary>
    public async Task<byte[]?> OfAsync(string sha256, CancellationToken stop) =>
        source.Has(sha256) && kept.SlipOf(sha256) is { } slip && kept.Copy(slip, CopyKind.Display) is { } copy
            ? copy
            : await record.PictureOf(sha256, stop);
}
