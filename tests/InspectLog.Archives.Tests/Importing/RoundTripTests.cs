using CsCheck;
using InspectLog.Archives.Importing;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Importing;

/// <summary>An archive taken into an empty garage and made again is the same archive.</summary>
public sealed class RoundTripTests
{
    private static readonly Gen<int[]> Steps = Gen.Int[0, 5].Array[0, 25];

    [Fact]
    public void Archive_of_an_archive_has_the_same_journal_and_the_same_media() => Steps.Sample(
        steps =>
        {
            using var there = new TempFolder();
            using var here = new TempFolder();
            using var files = new TempFolder();
            var vehicle = Play(there.Path, steps);
            var first = SomeArchive.FolderAsync(there.Path, vehicle, files.At("first")).GetAwaiter().GetResult();
            string taken;
            using (var garage = SomeGarage.Open(here.Path))
            using (var tree = SomeArchive.Open(first))
            {
                taken = new ArchiveImport(garage, _ => long.MaxValue).Run(tree, SomeArchive.Check.Check(tree).Facts!).VehicleId;
            }

            var second = SomeArchive.FolderAsync(here.Path, taken, files.At("second")).GetAwaiter().GetResult();
            Assert.Equal(SomeArchive.Files(first), SomeArchive.Files(second));
            Assert.True(JournalVerifier.Verify(here.Path, _ => true).IsIntact);
        },
        iter: 6,
        threads: 1);

    private static string Play(string folder, int[] steps)
    {
        var vehicle = SomeGarage.Make(folder);
        using var garage = SomeGarage.Open(folder);
        foreach (var (at, step) in steps.Index())
        {
            var inspection = garage.FindVehicle(vehicle)!.Inspections[0].Number;
            EntryBody body = step switch
            {
                0 => new VehicleDescribed($"Marigold {at}", "Ω \"quoted\" \n line", null),
                1 => new PrivateFactsNoted("", "", ""),
                2 => new VehiclePictured(garage.Media.Keep(SomeGarage.Photo($"view {at}"), "image/png")),
                3 => new RecordingKept(inspection, garage.Media.Keep(SomeGarage.Sound($"words {at}"), "audio/wav"), at, null),
                4 => new NoteWritten(inspection, null, $"Note {at} \u202E 🔧"),
                _ => new EntryWithdrawn(5, "No reason"),
            };
            garage.Append(vehicle, "Somebody", _ => [body]);
        }

        return vehicle;
    }
}
