using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Archiving;

/// <summary>A voice note that came in with an archive and was read nowhere: it is read here when somebody asks.</summary>
public sealed class CameInPagesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Voice_note_of_a_closed_inspection_that_came_in_waits_until_somebody_asks_for_its_words()
    {
        await using var there = await TestApp.StartAsync(new ScriptedSpeech { Problem = "No speech here." });
        await using var here = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await there.StartInspectionAsync();
        var media = there.Garage.Media.Keep(Sounds.Tone(), "audio/wav");
        there.Garage.Append("marigold", "Tess Okafor", now =>
            [new RecordingKept(now.OpenInspection!.Number, media, 1, null), new InspectionClosed(now.OpenInspection!.Number)]);
        Assert.Contains("1 voice note is still to be read", (await there.PageAsync("/vehicles/marigold/archive")).Body!.TextContent, StringComparison.Ordinal);
        var bytes = await there.Client.GetByteArrayAsync(await ArchivePagesTests.MakeAsync(there, "/vehicles/marigold", "everything"), Stop);

        await here.PostForRedirectAsync((await ArchivePagesTests.SendAsync(here, bytes)).Headers.Location!.ToString());

        Assert.Empty(here.Garage.WaitingRecordings());
        var note = here.Garage.FindVehicle("marigold")!.Inspections[0].VoiceNotes.Single();
        var page = await here.PageAsync(bench);
        Assert.Contains("It came in with an archive", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector($"form[action='{bench}/recordings/{note.Sequence}/transcribe']"));

        await here.PostForRedirectAsync($"{bench}/recordings/{note.Sequence}/transcribe");

        var read = await Eventually.GetAsync(() => here.Garage.FindVehicle("marigold")!.Inspections[0].FindVoiceNote(note.Sequence)!.Transcript);
        Assert.Equal("Plug two is wet.", read.Text);
    }
}
