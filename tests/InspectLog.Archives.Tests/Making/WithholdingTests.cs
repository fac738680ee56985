using System.Text;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal.Entries;

namespace InspectLog.Archives.Tests.Making;

public sealed class WithholdingTests : IDisposable
{
    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();
    private readonly string _vehicle;

    public WithholdingTests() => _vehicle = SomeGarage.Make(_garage.Path);

    public void Dispose()
    {
        _garage.Dispose();
        _out.Dispose();
    }

    public static TheoryData<string> Secrets => new(
        SomeGarage.Owner, "ana@example.org", SomeGarage.Vin, SomeGarage.PrivateNote, "Something else", "ditch", "quarry", "neighbour", "59.9 N", "RIFF");

    [Theory]
    [MemberData(nameof(Secrets))]
    public async Task Nothing_a_buyer_should_not_have_is_anywhere_in_the_archive(string secret)
    {
        var everything = await ArchiveAsync(ArchiveProfiles.Everything);
        var buyer = await ArchiveAsync(ArchiveProfiles.Buyer);

        Assert.Contains(SomeArchive.Files(everything).Values, file => Holds(file, secret));
        Assert.DoesNotContain(SomeArchive.Files(buyer).Values, file => Holds(file, secret));
    }

    [Fact]
    public async Task Archive_for_a_buyer_verifies_and_names_what_was_withheld()
    {
        var archive = SomeArchive.Checked(await ArchiveAsync(ArchiveProfiles.Buyer));

        Assert.Empty(archive.Faults);
        Assert.Equal(
            ["private-facts", "recording-kept", "transcript-made", "findings-proposed", "words-corrected", "photo-kept", "photo-marked", "entry-withdrawn", "note-written", "note-written"],
            archive.Facts!.WithheldEntries.Select(entry => entry.Kind));
        Assert.Equal(
            ["image/jpeg", "audio/wav", "image/jpeg"], archive.Facts.Withheld.Select(one => one.File.Type));
        Assert.Equal([true, false, true], archive.Facts.Withheld.Select(one => one.Copy is not null));
        Assert.Equal(("buyer", "4217"), (archive.Facts.Profile, archive.Facts.VinEnding));
    }

    [Fact]
    public async Task What_a_buyer_pays_for_is_there()
    {
        var archive = SomeArchive.Checked(await ArchiveAsync(ArchiveProfiles.Buyer)).Facts!;

        var bodies = archive.Entries.Select(entry => entry.Body).ToList();
        Assert.Contains(bodies.OfType<NoteWritten>(), note => note.Text == SomeGarage.OpenNote);
        Assert.Single(bodies.OfType<ReadingDecided>());
        Assert.Equal("Lead three is nine kilohms.", Assert.Single(bodies.OfType<TranscriptMade>()).Text);
        Assert.Single(bodies.OfType<PhotoKept>());
    }

    [Fact]
    public async Task Hash_of_the_last_entry_is_the_same_whoever_it_is_for()
    {
        var everything = SomeArchive.Checked(await ArchiveAsync(ArchiveProfiles.Everything)).Facts!;
        var buyer = SomeArchive.Checked(await ArchiveAsync(ArchiveProfiles.Buyer)).Facts!;

        Assert.Equal(everything.Entries.Select(entry => entry.Hash), buyer.Entries.Select(entry => entry.Hash));
    }

    [Theory]
    [InlineData("ZZA00000000004217", "4217")]
    [InlineData("123456789", "789")]
    [InlineData("A-12", "2")]
    [InlineData("12", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void Only_the_end_of_a_vehicle_number_is_shown_and_never_more_than_a_third(string? vin, string? ending) =>
        Assert.Equal(ending, VehicleNumber.Ending(vin));

    [Fact]
    public void Each_profile_says_what_it_leaves_out_and_withholds_nothing_unsaid()
    {
        Assert.All(ArchiveProfiles.All, profile =>
        {
            var withholds = new[] { profile.WithholdsPrivateFacts, profile.WithholdsLeftOutOfReport, profile.WithholdsRecordings, profile.PhotosAreCopies };
            Assert.Equal(withholds.Count(one => one), profile.LeavesOut.Count);
            Assert.Same(profile, ArchiveProfiles.Find(profile.Id));
        });
        Assert.Null(ArchiveProfiles.Find("nobody"));
    }

    private Task<string> ArchiveAsync(ArchiveProfile profile) =>
        SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, profile, TestContext.Current.CancellationToken);

    private static bool Holds(byte[] file, string text) => file.AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) >= 0;
}
