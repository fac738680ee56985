using CsCheck;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class ClipCutterTests
{
    private const int Second = PcmAudio.SampleRate;

    private static readonly float[] FiveMinutes = new float[300 * Second];

    [Fact]
    public void No_speech_gives_no_clip() => Assert.Empty(ClipCutter.Cut(FiveMinutes, []));

    [Fact]
    public void Short_pause_stays_in_the_clip()
    {
        var clip = Assert.Single(ClipCutter.Cut(FiveMinutes, [new(0, 2 * Second), new(3 * Second, 4 * Second)]));
        Assert.Equal(4 * Second, clip.Length);
    }

    [Fact]
    public void Long_pause_is_cut_out_and_times_still_point_at_the_recording()
    {
        var clip = Assert.Single(ClipCutter.Cut(FiveMinutes, [new(10 * Second, 12 * Second), new(20 * Second, 25 * Second)]));
        Assert.Equal(7 * Second, clip.Length);
        Assert.Equal(11, clip.ToRecording(1));
        Assert.Equal(21, clip.ToRecording(3));
        Assert.Equal(25, clip.ToRecording(99));
        Assert.Equal(10, clip.ToRecording(-1));
    }

    [Fact]
    public void Speech_after_a_long_pause_that_the_smallest_window_cannot_hold_is_a_clip_of_its_own()
    {
        var clips = ClipCutter.Cut(FiveMinutes, [new(0, 4 * Second), new(7 * Second, 9 * Second), new(11 * Second, 14 * Second)]);
        Assert.Equal([6 * Second, 3 * Second], clips.Select(clip => clip.Length));
    }

    [Fact]
    public void Speech_without_a_pause_is_cut_where_it_is_quietest()
    {
        var loud = Enumerable.Repeat(0.5f, 60 * Second).ToArray();
        loud.AsSpan(25 * Second, Second / 2).Clear();
        var first = ClipCutter.Cut(loud, [new(0, 60 * Second)])[0];
        Assert.InRange(first.Seconds, 25, 25.5);
    }

    [Fact]
    public void Clips_keep_all_speech_in_order_and_within_the_window() =>
        Gen.Select(Gen.Int[1, 40 * Second], Gen.Int[1, 3 * Second]).Array[0, 8].Sample(parts =>
        {
            var at = 0;
            var spans = new List<SpeechSpan>();
            foreach (var (length, gap) in parts)
            {
                spans.Add(new SpeechSpan(at, Math.Min(at + length, FiveMinutes.Length)));
                at = Math.Min(at + length + gap, FiveMinutes.Length);
            }

            var clips = ClipCutter.Cut(FiveMinutes, spans);
            var kept = clips.SelectMany(clip => clip.Spans).ToList();
            Assert.All(clips, clip => Assert.InRange(clip.Length, 1, ClipCutter.LongestClip));
            Assert.All(kept.Zip(kept.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start));
            Assert.True(kept.Sum(span => span.Length) >= spans.Sum(span => span.Length));
        }, iter: 200);
}
