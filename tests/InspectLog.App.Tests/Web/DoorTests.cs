using System.Net;
using AngleSharp.Dom;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>What the sheet does not have comes into the journal by no door.</summary>
public sealed class DoorTests
{
    public static TheoryData<string, (string, string)[]> Foreign() => new()
    {
        { "readings", [("check", "no-such-check"), ("value", "9"), ("unit", "kΩ")] },
        { "readings", [("check", "lead-resistance"), ("cylinder", "99"), ("value", "9"), ("unit", "kΩ")] },
        { "readings", [("check", "plug-condition"), ("cylinder", "1"), ("value", "9"), ("unit", "kΩ")] },
        { "brackets", [("check", "no-such-check"), ("goes", "0.8"), ("stops", "0.9"), ("unit", "mm")] },
        { "brackets", [("check", "plug-gap"), ("cylinder", "99"), ("goes", "0.8"), ("stops", "0.9"), ("unit", "mm")] },
        { "observations", [("check", "no-such-check"), ("cylinder", "1"), ("condition", "wet")] },
        { "observations", [("check", "plug-condition"), ("cylinder", "99"), ("condition", "wet")] },
        { "observations", [("check", "plug-condition"), ("cylinder", "1"), ("condition", "haunted")] },
        { "actions", [("check", "no-such-check"), ("cylinder", "1"), ("action", "cleaned")] },
        { "actions", [("check", "plug-condition"), ("cylinder", "99"), ("action", "cleaned")] },
        { "actions", [("check", "plug-condition"), ("cylinder", "1"), ("action", "polished")] },
        { "findings/NOTE/0/change", [("check", "no-such-check"), ("value", "9"), ("unit", "kΩ")] },
        { "findings/NOTE/0/change", [("check", "lead-resistance"), ("cylinder", "99"), ("value", "9"), ("unit", "kΩ")] },
        { "findings/NOTE/1/change", [("check", "plug-condition"), ("cylinder", "1"), ("condition", "haunted")] },
        { "findings/NOTE/1/change", [("check", "plug-condition"), ("cylinder", "99"), ("condition", "wet")] },
    };

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task Form_with_what_the_sheet_does_not_have_is_refused_with_a_message(string address, (string, string)[] fields)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9000, 1), HeardNote.Seen("plug-condition", "wet", 1));
        var entries = app.CountOfEntries();

        var answer = await app.PostAsync($"{bench}/{address.Replace("NOTE", $"{note}", StringComparison.Ordinal)}", fields);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains(page.QuerySelectorAll(".problems, .wrong"), problem => problem.Text().Contains("hoose", StringComparison.Ordinal));
        Assert.Equal(entries, app.CountOfEntries());
    }

    [Fact]
    public async Task Photo_of_a_place_that_is_not_there_is_refused_with_a_message()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entries = app.CountOfEntries();
        using var form = new MultipartFormDataContent
        {
            { new StringContent("lead-condition"), "check" },
            { new StringContent("99"), "cylinder" },
            { new ByteArrayContent(Picture()), "photo", "lead.jpg" },
        };

        var answer = await app.Client.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("from 1 to 6", (await TestApp.ParseAsync(answer)).Body!.Text(), StringComparison.Ordinal);
        Assert.Equal(entries, app.CountOfEntries());
    }

    public static TheoryData<string, Func<long, MediaFile, EntryBody>> Bodies() => new()
    {
        { "check", (number, _) => new ObservationMade(number, "no-such-check", null, "wet", false, null) },
        { "place", (number, _) => new ObservationMade(number, "plug-condition", 99, "wet", false, null) },
        { "no place", (number, _) => new ObservationMade(number, "plug-condition", null, "wet", false, null) },
        { "condition", (number, _) => new ObservationMade(number, "plug-condition", 1, "haunted", false, null) },
        { "action", (number, _) => new ActionDone(number, "plug-condition", 1, "polished", null) },
        { "photo", (number, media) => new PhotoKept(number, media, 10, 10, "plug-condition", 99) },
        { "note", (number, _) => new NoteWritten(number, "no-such-check", "Words") },
        { "left out", (number, _) => new CheckLeftOut(number, "no-such-check", "Not today") },
        { "amends nothing", (number, _) => new ObservationMade(number, "plug-condition", 1, "wet", false, null) { Amends = 999 } },
        { "withdraws nothing", (_, _) => new EntryWithdrawn(999, "misread") },
        { "restores nothing", (_, _) => new EntryRestored(999) },
    };

    [Theory]
    [MemberData(nameof(Bodies), DisableDiscoveryEnumeration = true)]
    public async Task Entry_with_what_the_sheet_does_not_have_is_refused_by_the_garage_itself(
        string what, Func<long, MediaFile, EntryBody> body)
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var media = app.Garage.Media.Keep(Sounds.Tone(), "audio/wav");
        var entries = app.CountOfEntries();

        var refused = Assert.Throws<EntryRefusedException>(() => app.Garage.Append(
            "marigold", "Tess Okafor", now => [body(now.OpenInspection!.Number, media)]));

        Assert.True(refused.Message.Length > 0, what);
        Assert.Equal(entries, app.CountOfEntries());
    }

    private static byte[] Picture()
    {
        using var image = new Image<Rgb24>(64, 48, new Rgb24(120, 90, 60));
        using var bytes = new MemoryStream();
        image.SaveAsJpeg(bytes);
        return bytes.ToArray();
    }
}
