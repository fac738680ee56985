using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

public sealed class IndexTests : IDisposable
{
    private readonly TempFolder _folder = new();

    private string IndexFile => _folder.At("index.db");

    private string LogFile => _folder.At("index-log.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Index_made_entry_by_entry_is_the_one_made_from_the_journals()
    {
        using var garage = FilledGarage();
        var before = Everything(garage);

        garage.RebuildIndex();

        Assert.Equal(before, Everything(garage));
        Assert.NotEmpty(garage.WaitingRecordings());
    }

    [Theory]
    [InlineData("deleted")]
    [InlineData("empty")]
    [InlineData("noise")]
    [InlineData("cut in half")]
    [InlineData("a page overwritten")]
    [InlineData("not closed")]
    [InlineData("a folder")]
    public void Index_that_is_no_good_is_made_again_at_the_next_start(string state)
    {
        string before;
        using (var garage = FilledGarage())
        {
            before = Everything(garage);
        }

        var made = File.GetCreationTimeUtc(IndexFile);
        Spoil(state);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal(before, Everything(again));
        Assert.NotEqual(made, File.GetCreationTimeUtc(IndexFile));
        Assert.Equal(state == "a folder", again.Problems.Count == 1); // cannot be replaced: it works from memory
        Assert.Equal(2, again.Append("otter", "Tess", _ => [new NoteWritten(0, null, "zebra")]).Inspections.Count);
        Assert.Single(again.Search("zebra"));
    }

    [Fact]
    public void Index_of_an_older_state_is_made_again()
    {
        using (FilledGarage())
        {
            // Closed in good order.
        }

        var old = File.ReadAllBytes(IndexFile);
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.Note("otter", "a walrus");
            garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
        }

        File.WriteAllBytes(IndexFile, old);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Single(again.Search("walrus"));
        Assert.Contains(again.Vehicles(), vehicle => vehicle.Name == "Heron");
    }

    [Fact]
    public void Journal_cut_short_at_a_lines_end_is_noticed_once()
    {
        using (FilledGarage())
        {
            // Closed in good order.
        }

        var journal = _folder.At("vehicles", "otter", "journal.jsonl");
        File.WriteAllLines(journal, File.ReadAllLines(journal).SkipLast(1));

        using (var shorter = Garage.Open(_folder.Path, Some.Clock()))
        {
            var problem = Assert.Single(shorter.Problems);
            Assert.Equal((false, "otter"), (problem.ReadOnly, problem.VehicleId));
            Assert.Contains("no longer holds", problem.Message, StringComparison.Ordinal);
            Assert.Empty(shorter.WaitingRecordings());
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Empty(again.Problems);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Vehicle_whose_journal_is_gone_is_told_of_and_not_begun_anew(bool empty)
    {
        using (FilledGarage())
        {
            // Closed in good order.
        }

        var journal = _folder.At("vehicles", "otter", "journal.jsonl");
        File.Delete(journal);
        if (empty)
        {
            File.WriteAllText(journal, "");
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Contains("holds no journal", Assert.Single(again.Problems).Message, StringComparison.Ordinal);
        Assert.Null(again.FindVehicle("otter"));
        Assert.Equal("otter-2", again.AddVehicle(Some.Technician, Some.Vehicle("Otter")));
    }

    [Fact]
    public void Vehicle_that_is_gone_is_noticed()
    {
        using (FilledGarage())
        {
            // Closed in good order.
        }

        Directory.Delete(_folder.At("vehicles", "otter"), recursive: true);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal("otter", Assert.Single(again.Problems).VehicleId);
        Assert.Equal("Marigold", Assert.Single(again.Vehicles()).Name);
    }

    [Fact]
    public void Index_that_was_closed_in_good_order_is_used_as_it_is()
    {
        using (FilledGarage())
        {
            // Closed in good order.
        }

        Assert.False(File.Exists(LogFile));
        var made = File.GetCreationTimeUtc(IndexFile);

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.NotEmpty(again.Vehicles());
        Assert.Equal(made, File.GetCreationTimeUtc(IndexFile));
    }

    [Fact]
    public void Index_that_breaks_at_work_is_replaced_by_one_in_memory_and_nothing_is_refused()
    {
        string before;
        using (var filled = FilledGarage())
        {
            before = Everything(filled);
        }

        using var garage = Garage.Open(_folder.Path, Some.Clock()); // so that nothing of the file is in LiteDB's cache
        using (var file = new FileStream(IndexFile, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite))
        {
            var noise = new byte[file.Length];
            new Random(1).NextBytes(noise);
            file.Write(noise);
        }

        Assert.Equal(before, Everything(garage));
        garage.Note("otter", "a walrus");
        Assert.Single(garage.Search("walrus"));
        Assert.False(Assert.Single(garage.Problems).ReadOnly);
        garage.RebuildIndex();
        Assert.Empty(garage.Problems);
        Assert.Single(garage.Search("walrus"));
    }

    [Theory]
    [InlineData("kilohms", 1)]
    [InlineData("KILOHMS nine", 1)]
    [InlineData("kilo", 1)] // the beginning of a word is enough
    [InlineData("ohms", 0)] // its end is not
    [InlineData("nine walrus", 0)] // each word must occur
    [InlineData("Hauptstrasse", 1)]
    [InlineData("HAUPTSTRAẞE", 1)]
    [InlineData("hauptstraße", 1)]
    [InlineData("creme brulee", 1)]
    [InlineData("Crème Brûlée!", 1)]
    [InlineData("burnt", 2)]
    [InlineData("not burnt", 1)]
    [InlineData("plug-condition", 1)]
    [InlineData("cylinder 3", 3)]
    [InlineData("marigold", 1)]
    [InlineData("saloon", 2)]
    [InlineData("timing light", 1)]
    [InlineData("stand", 1)]
    [InlineData("9k", 1)]
    [InlineData("", 0)]
    [InlineData("  ?! ", 0)]
    [InlineData("% _ @0 ' \" $.x", 0)]
    [InlineData("Lindqvist", 0)] // private facts are not searched
    [InlineData("MG-000-42", 0)]
    public void Search_finds_entries_that_hold_every_word(string words, int hits)
    {
        using var garage = FilledGarage();

        Assert.Equal(hits, garage.Search(words).Count);
    }

    [Fact]
    public void Hit_says_where_it_stands()
    {
        using var garage = FilledGarage();

        var hit = Assert.Single(garage.Search("nine kilohms"));

        Assert.Equal(("otter", "Otter"), (hit.VehicleId, hit.VehicleName));
        Assert.Equal("Number three, nine kilohms.", hit.Text);
        var entry = garage.Entries("otter")[(int)hit.Sequence - 1];
        Assert.Equal(entry.Time, hit.Time);
        var recording = Assert.IsType<TranscriptMade>(entry.Body).Recording;
        Assert.NotNull(garage.FindVehicle("otter")!.Inspection(hit.Inspection!.Value)!.FindVoiceNote(recording));
    }

    [Fact]
    public void Hits_are_the_hundred_newest_with_the_newest_first()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        for (var n = 0; n < 120; n++)
        {
            clock.Advance(TimeSpan.FromSeconds(n % 2)); // two entries may have the same time
            garage.Note(id, $"note {n}");
        }

        var hits = garage.Search("note");

        Assert.Equal(Enumerable.Range(20, 100).Reverse().Select(n => $"note {n}"), hits.Select(hit => hit.Text));
    }

    [Fact]
    public void Vehicles_are_listed_with_those_last_worked_on_first()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        foreach (var name in new[] { "Otter", "Heron", "Marigold" })
        {
            clock.Advance(TimeSpan.FromMinutes(1));
            garage.AddVehicle(Some.Technician, Some.Vehicle(name));
        }

        clock.Advance(TimeSpan.FromMinutes(1));
        garage.Append("heron", Some.Technician, _ => [new VehiclePictured(Some.Photo), new VehicleDescribed("Grey Heron", " ", null)]);

        Assert.Equal(["Grey Heron", "Marigold", "Otter"], garage.Vehicles().Select(vehicle => vehicle.Name));
        var heron = garage.Vehicles()[0];
        Assert.Equal(("heron", " ", Some.Photo.Sha256), (heron.Id, heron.Description, heron.PictureSha256));
        Assert.Equal(clock.GetUtcNow(), heron.LastChanged);
    }

    [Fact]
    public void Recording_waits_until_it_has_a_transcript_or_has_failed()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var number = garage.StartInspection(id);
        var recordings = Enumerable.Range(0, 3).Select(_ =>
        {
            clock.Advance(TimeSpan.FromSeconds(1));
            return garage.Append(id, "Tess", _ => [new RecordingKept(number, Some.Recording, 1, null)]).NextSequence - 1;
        }).ToArray();

        Assert.Equal(recordings, garage.WaitingRecordings().Select(waiting => waiting.Recording));
        Assert.All(garage.WaitingRecordings(), waiting => Assert.Equal((id, number), (waiting.VehicleId, waiting.Inspection)));

        garage.Append(id, "InspectLog", _ => [new TranscriptFailed(recordings[0], "unreadable")]);
        garage.Append(id, "InspectLog", _ => [new TranscriptMade(recordings[2], "", [], false, "m", "")]);

        Assert.Equal([recordings[1]], garage.WaitingRecordings().Select(waiting => waiting.Recording));
        garage.RebuildIndex();
        Assert.Equal([recordings[1]], garage.WaitingRecordings().Select(waiting => waiting.Recording));
    }

    [Fact]
    public void Recording_that_is_cancelled_waits_no_more_and_waits_again_once_asked_for()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var number = garage.StartInspection(id);
        var recording = garage.Append(id, "Tess", _ => [new RecordingKept(number, Some.Recording, 1, null)]).NextSequence - 1;

        garage.Append(id, "Tess", _ => [new TranscriptCancelled(recording)]);
        Assert.Empty(garage.WaitingRecordings());

        clock.Advance(TimeSpan.FromSeconds(5));
        garage.Append(id, "Tess", _ => [new TranscriptAsked(recording)]);
        WaitingRecording asked = new(id, recording, number, clock.GetUtcNow());
        Assert.Equal(asked, Assert.Single(garage.WaitingRecordings()));
        garage.RebuildIndex();
        Assert.Equal(asked, Assert.Single(garage.WaitingRecordings()));
    }

    [Theory]
    [InlineData("Plug no. 3: 0,7 mm", "plug no 3 0 7 mm")]
    [InlineData("ÅÉÎøØ ŁÓDŹ", "aeioo lodz")]
    [InlineData("ﬁlter ½ Ω", "filter 1 2 ω")]
    [InlineData("", "")]
    public void Text_is_cut_into_words_without_case_and_accents(string text, string words) =>
        Assert.Equal(words, string.Join(' ', Words.Of(text)));

    [Fact]
    public void Word_without_end_can_be_kept_and_found()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Note(id, new string('x', 100_000));

        Assert.Single(garage.Search(new string('x', 2000)));
        Assert.Empty(garage.Problems);
    }

    private void Spoil(string state)
    {
        var bytes = File.ReadAllBytes(IndexFile);
        switch (state)
        {
            case "deleted":
                File.Delete(IndexFile);
                break;
            case "empty":
                File.WriteAllBytes(IndexFile, []);
                break;
            case "noise":
                new Random(1).NextBytes(bytes);
                File.WriteAllBytes(IndexFile, bytes);
                break;
            case "cut in half":
                File.WriteAllBytes(IndexFile, bytes[..(bytes.Length / 2)]);
                break;
            case "a page overwritten":
                bytes.AsSpan(8192, 8192).Fill(7);
                File.WriteAllBytes(IndexFile, bytes);
                break;
            case "not closed":
                File.WriteAllBytes(LogFile, []);
                break;
            case "a folder":
                File.Delete(IndexFile);
                Directory.CreateDirectory(IndexFile);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(state));
        }
    }

    private Garage FilledGarage()
    {
        var garage = Garage.Open(_folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, new("Marigold", "1968 saloon", null));
        garage.AddVehicle(Some.Technician, new("Otter", "1971 saloon", null), new PrivateFactsNoted("Ana Lindqvist", "", "MG-000-42"));
        var first = garage.StartInspection("otter");
        garage.Append("otter", Some.Technician, state =>
        [
            new RecordingKept(first, Some.Recording, 3.2, null),
            new TranscriptMade(state.NextSequence, "Number three, nine kilohms.", [], true, "m", ""),
            new NoteWritten(first, null, "Was parked in Hauptstraße, next to a crème brûlée."),
            new ObservationMade(first, "plug-condition", 3, "burnt", false, null),
            new ObservationMade(first, "rotor-blade", 3, "burnt", true, null),
            new ReadingDecided(first, "lead-resistance", 3, new Measuring.Bracket(1, 2), "9k", null, null, null, []),
            new CheckLeftOut(first, "ignition-timing", "No timing light."),
            new LooseEndOpened(first, "Coil lead off", "Put it back", null, null, null),
            new LooseEndWaived(state.NextSequence + 7, "The car stays on the stand."),
            new InspectionClosed(first),
        ]);
        var second = garage.StartInspection("otter");
        garage.Append("otter", Some.Technician, _ => [new RecordingKept(second, Some.Recording, 1, null)]);
        return garage;
    }

    private static string Everything(Garage garage) => string.Join(
        '\n',
        [
            .. garage.Vehicles().Select(row => row.ToString()),
            .. garage.WaitingRecordings().Select(row => row.ToString()),
            .. "abcdefghijklmnopqrstuvwxyz0123456789".SelectMany(c => garage.Search($"{c}")).Select(row => row.ToString()),
        ]);
}
