using System.Net;
using System.Net.Http.Headers;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>What becomes of voice notes that are cancelled, fail, or wait behind others.</summary>
public sealed class VoiceNoteTests
{
    private const string CoilReading = "Coil secondary 9.4 k.";

    private static readonly TimeSpan Patience = Eventually.Patience;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Note_that_is_being_read_can_be_cancelled_and_read_later()
    {
        var speech = new ScriptedSpeech(CoilReading) { Gate = new() };
        await using var app = await TestApp.StartAsync(speech);
        var bench = await app.StartInspectionAsync();
        var recording = await SendAsync(app, bench);
        await speech.Begun.WaitAsync(Patience, Stop);
        Assert.NotNull((await app.PageAsync(bench)).QuerySelector($"form[action='{bench}/recordings/{recording}/cancel'] button"));

        await app.PostForRedirectAsync($"{bench}/recordings/{recording}/cancel");

        await speech.Cancelled.WaitAsync(Patience, Stop);
        Assert.True(Note(app, recording).IsSetAside);
        var page = await app.PageAsync(bench);
        Assert.Contains("kept, not read", page.QuerySelector($"#item-{recording}")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector($"#play-{recording}"));
        Assert.Null(page.QuerySelector($"#progress-{recording}"));

        speech.Gate.SetResult();
        await app.PostForRedirectAsync($"{bench}/recordings/{recording}/transcribe");

        Assert.Equal(9400, Assert.Single((await ReadAsync(app, recording)).Proposals!).Finding.Value);
    }

    [Fact]
    public async Task Note_that_waits_behind_another_can_be_cancelled()
    {
        var speech = new ScriptedSpeech(CoilReading) { Gate = new() };
        await using var app = await TestApp.StartAsync(speech);
        var bench = await app.StartInspectionAsync();
        var first = await SendAsync(app, bench);
        await speech.Begun.WaitAsync(Patience, Stop);
        var second = await SendAsync(app, bench);

        await app.PostForRedirectAsync($"{bench}/recordings/{second}/cancel");
        speech.Gate.SetResult();

        Assert.Single((await ReadAsync(app, first)).Proposals!);
        Assert.True(Note(app, second).IsSetAside);
        Assert.False(speech.Cancelled.IsCompleted);
    }

    [Fact]
    public async Task Cancelling_a_note_that_is_read_changes_nothing()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech(CoilReading));
        var bench = await app.StartInspectionAsync();
        var recording = await SendAsync(app, bench);
        await ReadAsync(app, recording);

        await app.PostForRedirectAsync($"{bench}/recordings/{recording}/cancel");
        await app.PostForRedirectAsync($"{bench}/recordings/{recording}/transcribe");

        Assert.Equal("Coil secondary 9.4 k.", Note(app, recording).Transcript!.Text);
        Assert.Single(Note(app, recording).Proposals!);
    }

    [Fact]
    public async Task Note_that_fails_says_why_lets_others_through_and_can_be_tried_again()
    {
        var speech = new ScriptedSpeech(CoilReading) { Failure = "The speech worker stopped 3 times on this recording." };
        await using var app = await TestApp.StartAsync(speech);
        var bench = await app.StartInspectionAsync();
        var failing = await SendAsync(app, bench);
        await Eventually.GetAsync(() => Note(app, failing).Failure);
        speech.Failure = null;
        var other = await SendAsync(app, bench);
        await ReadAsync(app, other);

        var item = (await app.PageAsync(bench)).QuerySelector($"#item-{failing}")!;
        Assert.Contains("stopped 3 times", item.TextContent, StringComparison.Ordinal);
        Assert.NotNull(item.QuerySelector($"form[action='{bench}/recordings/{failing}/transcribe'] button"));

        await app.PostForRedirectAsync($"{bench}/recordings/{failing}/transcribe");

        Assert.NotNull((await ReadAsync(app, failing)).Transcript);
    }

    [Fact]
    public async Task Note_of_the_inspection_somebody_has_open_is_read_before_newer_ones_of_others()
    {
        var speech = new ScriptedSpeech("first", "second", "third") { Gate = new() };
        await using var app = await TestApp.StartAsync(speech);
        var open = await app.StartInspectionAsync();
        var other = await app.PostForRedirectAsync($"{await app.AddVehicleAsync("Teasel")}/inspections", ("technician", "Tess Okafor"));
        using var events = await app.Client.GetStreamAsync($"{open}/events", Stop);
        await events.ReadExactlyAsync(new byte[1], Stop); // the page is connected
        await SendAsync(app, other);
        await speech.Begun.WaitAsync(Patience, Stop);
        var inOpen = await SendAsync(app, open);
        var newer = await SendAsync(app, other);

        speech.Gate.SetResult();

        Assert.Equal("third", (await ReadAsync(app, newer, "teasel")).Transcript!.Text);
        Assert.Equal("second", (await ReadAsync(app, inOpen)).Transcript!.Text);
    }

    [Fact]
    public async Task Note_whose_transcript_has_no_words_says_that_no_speech_was_heard()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech(""));
        var bench = await app.StartInspectionAsync();
        var recording = await SendAsync(app, bench);
        await ReadAsync(app, recording);

        var item = (await app.PageAsync(bench)).QuerySelector($"#item-{recording}")!;
        Assert.Contains("No speech was heard in it. The recording is kept.", item.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cancel")]
    [InlineData("transcribe")]
    public async Task Unknown_note_is_told(string verb)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/recordings/99/{verb}")).StatusCode);
    }

    private static async Task<long> SendAsync(TestApp app, string bench)
    {
        using var content = new ByteArrayContent(Sounds.Tone());
        content.Headers.ContentType = new MediaTypeHeaderValue("audio/wav");
        var answer = await app.Client.PostAsync($"{bench}/recordings", content, Stop);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var vehicle = bench.Split('/')[2];
        return app.Garage.FindVehicle(vehicle)!.Inspections[0].VoiceNotes.Last().Sequence;
    }

    private static Task<VoiceNote> ReadAsync(TestApp app, long recording, string vehicle = "marigold") =>
        Eventually.GetAsync(() => Note(app, recording, vehicle) is { Proposals: not null } note ? note : null);

    private static VoiceNote Note(TestApp app, long recording, string vehicle = "marigold") =>
        app.Garage.FindVehicle(vehicle)!.Inspections[0].FindVoiceNote(recording)!;
}
