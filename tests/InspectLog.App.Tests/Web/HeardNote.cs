using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>A voice note in the open inspection of Marigold, with what it seems to say given by the test.</summary>
internal static class HeardNote
{
    public static ProposedFinding Reading(string check, double value, int? cylinder = null) =>
        new("reading", check, cylinder, value, null, null, null, false, null, "as heard", 0, 1, []);

    public static ProposedFinding Seen(string check, string condition, int? cylinder = null) =>
        new("observation", check, cylinder, null, null, null, condition, false, null, "as heard", 0, 1, []);

    /// <summary>Keeps the note and returns its sequence.</summary>
    public static long Propose(TestApp app, params ProposedFinding[] findings)
    {
        var media = app.Garage.Media.Keep(Sounds.Tone(), "audio/wav");
        long note = 0;
        app.Garage.Append("marigold", "Tess Okafor", now =>
        {
            note = now.NextSequence;
            return
            [
                new RecordingKept(now.OpenInspection!.Number, media, 1, null),
                new TranscriptMade(note, "as heard", [], true, "scripted", new string('0', 64)),
                new FindingsProposed(note, findings),
            ];
        });
        return note;
    }
}
