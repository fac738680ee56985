using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>Sounds of a garage that are no speech, made by arithmetic and the same every time.</summary>
internal static class Sounds
{
    private const double Rate = PcmAudio.SampleRate;

    public static PcmAudio Silence(double seconds) => Make(seconds, _ => 0);

    public static PcmAudio White(double seconds)
    {
        var random = new Random(1);
        return Make(seconds, _ => 0.2 * ((2 * random.NextDouble()) - 1));
    }

    /// <summary>A compressor: mains hum with its overtones.</summary>
    public static PcmAudio Hum(double seconds) =>
        Make(seconds, t => (0.2 * Sine(50, t)) + (0.15 * Sine(100, t)) + (0.1 * Sine(150, t)));

    /// <summary>A six-cylinder engine idling at 750 rpm, 37.5 firing strokes a second, uneven, with some hiss.</summary>
    public static PcmAudio Engine(double seconds)
    {
        var random = new Random(2);
        return Make(seconds, t =>
        {
            var sinceStroke = (t * 37.5) % 1 / 37.5;
            var strength = 0.6 + (0.2 * Sine(6.25, t));
            return (strength * Math.Exp(-sinceStroke * 60) * Sine(90, t)) + (0.03 * ((2 * random.NextDouble()) - 1));
        });
    }

    /// <summary>An engine revved up and down between 700 and 2,500 rpm: the first ten orders of its firing, swelling with
    /// the revs, over the rush of its intake.</summary>
    public static PcmAudio RevvedEngine(double seconds)
    {
        var random = new Random(4);
        var (turned, rush) = (0.0, 0.0);
        return Make(seconds, t =>
        {
            var revs = 1_600 + (900 * Sine(0.2, t));
            turned += revs / 60 / Rate;
            rush += 0.05 * ((2 * random.NextDouble()) - 1 - rush);
            var orders = Enumerable.Range(1, 10).Sum(order => Math.Sin(2 * Math.PI * 3 * turned * order / 2) / order);
            return ((0.2 + (revs / 10_000)) * orders / 2) + (0.5 * rush);
        });
    }

    /// <summary>A leaking air line and a compressor: hiss above 2 kHz that swells twenty times a second, and hum.</summary>
    public static PcmAudio Hiss(double seconds)
    {
        var random = new Random(5);
        var low = 0.0;
        return Make(seconds, t =>
        {
            var white = (2 * random.NextDouble()) - 1;
            low += 0.55 * (white - low);
            return (0.3 * (1 + (0.3 * Sine(20, t))) * (white - low)) + (0.1 * Sine(50, t));
        });
    }

    /// <summary>Knocks of all strengths at all times, with a tail of the room: somebody looking through a tool box.</summary>
    public static PcmAudio Rattle(double seconds)
    {
        var random = new Random(6);
        var (next, strength, pitch, since) = (0.0, 0.0, 0.0, 1.0);
        return Make(seconds, t =>
        {
            since += 1 / Rate;
            if (t >= next)
                (next, strength, pitch, since) = (t + (0.5 * random.NextDouble()), random.NextDouble(), 1_000 + (4_000 * random.NextDouble()), 0);
            var noise = (2 * random.NextDouble()) - 1;
            return strength * ((0.5 * Math.Exp(-since * 40) * (Sine(pitch, t) + Sine(1.7 * pitch, t) + noise)) + (0.05 * Math.Exp(-since * 6) * noise));
        });
    }

    /// <summary>Hammer or ratchet: short ringing knocks.</summary>
    public static PcmAudio Knocks(double seconds, double aSecond)
    {
        var random = new Random(3);
        return Make(seconds, t =>
        {
            var since = (t * aSecond) % 1 / aSecond;
            return 0.8 * Math.Exp(-since * 80) * (Sine(2_300, t) + Sine(3_900, t) + ((2 * random.NextDouble()) - 1)) / 3;
        });
    }

    /// <summary>A tune of plucked notes from another bay's radio.</summary>
    public static PcmAudio Music(double seconds)
    {
        double[] notes = [220, 262, 330, 392, 440, 392, 330, 262];
        return Make(seconds, t =>
        {
            var note = notes[(int)(t * 4) % notes.Length];
            var since = (t * 4) % 1 / 4;
            return 0.4 * Math.Exp(-since * 6) * (Sine(note, t) + (0.5 * Sine(2 * note, t)) + (0.25 * Sine(3 * note, t)));
        });
    }

    /// <summary>Chords held on an organ with a slow tremolo, one every two seconds.</summary>
    public static PcmAudio Chords(double seconds)
    {
        double[][] chords = [[262, 330, 392], [220, 262, 330], [175, 220, 262], [196, 247, 294]];
        return Make(seconds, t =>
        {
            var chord = chords[(int)(t / 2) % chords.Length];
            var notes = chord.Sum(note => Sine(note, t) + (0.4 * Sine(2 * note, t)) + (0.2 * Sine(3 * note, t)) + (0.1 * Sine(4 * note, t)));
            return 0.12 * (1 + (0.2 * Sine(5, t))) * notes;
        });
    }

    /// <summary>A sound with speech in its middle, so loud over it.</summary>
    /// <param name="sound">The sound; longer than the speech.</param>
    /// <param name="speech">The speech.</param>
    /// <param name="decibels">Mean power of the speech over that of the sound.</param>
    public static PcmAudio With(this PcmAudio sound, PcmAudio speech, double decibels)
    {
        var samples = sound.Samples.ToArray();
        var power = samples.Average(sample => sample * sample);
        var gain = power == 0 ? 1 : Math.Sqrt(speech.Samples.ToArray().Average(sample => sample * sample) / power) / Math.Pow(10, decibels / 20);
        var start = (samples.Length - speech.Samples.Length) / 2;
        for (var i = 0; i < samples.Length; i++)
        {
            var said = i >= start && i < start + speech.Samples.Length ? speech.Samples.Span[i - start] : 0;
            samples[i] = Math.Clamp((float)(samples[i] * gain) + said, -1, 1);
        }

        return new PcmAudio(samples);
    }

    private static double Sine(double hertz, double t) => Math.Sin(2 * Math.PI * hertz * t);

    private static PcmAudio Make(double seconds, Func<double, double> at)
    {
        var samples = new float[(int)(seconds * Rate)];
        for (var i = 0; i < samples.Length; i++)
            samples[i] = (float)Math.Clamp(at(i / Rate), -1, 1);
        return new PcmAudio(samples);
    }
}
