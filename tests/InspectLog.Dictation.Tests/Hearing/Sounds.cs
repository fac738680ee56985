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

    private static double Sine(double hertz, double t) => Math.Sin(2 * Math.PI * hertz * t);

    private static PcmAudio Make(double seconds, Func<double, double> at)
    {
        var samples = new float[(int)(seconds * Rate)];
        for (var i = 0; i < samples.Length; i++)
            samples[i] = (float)Math.Clamp(at(i / Rate), -1, 1);
        return new PcmAudio(samples);
    }
}
