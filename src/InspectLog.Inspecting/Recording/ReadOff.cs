using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Values as they are read off an instrument, or why they cannot be. Pure.</summary>
public abstract record ReadOff
{
    private ReadOff()
    {
    }

    /// <summary>Values to be recorded.</summary>
    /// <param name="Values">The values, base unit.</param>
    /// <param name="Instrument">What they were read with.</param>
    public sealed record Taken(IReadOnlyList<double> Values, Instrument Instrument) : ReadOff;

    /// <summary>A person has to say first what was shown, or that another instrument was used.</summary>
    /// <param name="Question">What is asked.</param>
    /// <param name="Answers">The answers; one or more.</param>
    public sealed record Asked(string Question, IReadOnlyList<ReadOffAnswer> Answers) : ReadOff;

    /// <summary>They cannot be recorded.</summary>
    /// <param name="Message">Why, and what to do.</param>
    public sealed record Refused(string Message) : ReadOff;

    /// <summary>The same with an answer given: the values it stands for, where it answers what is asked.</summary>
    /// <param name="meant">What the form brought back; empty for nothing.</param>
    public ReadOff Answered(string meant) =>
        this is Asked { Answers: var answers } && answers.FirstOrDefault(answer => answer.Meant == meant) is { } answer
            ? new Taken(answer.Values, answer.Instrument)
            : this;

    /// <summary>Values that are said to be read off an instrument a person chose.</summary>
    /// <param name="values">The values, each in the unit it was given in.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="others">Others at hand, for advice; none where the instrument cannot be changed.</param>
    public static ReadOff By(
        Instrument instrument, IReadOnlyList<TypedNumber.Certain> values, IReadOnlyList<Instrument> others) =>
        Shown.By(instrument, values, InstrumentChoice.KnowsStepOf(instrument)) switch
        {
            Shown.Never { IsBeyondRange: true } never => new Refused($"{never.Problem} {Better(values, others)}"),
            Shown.Never never => new Refused(never.Problem),
            Shown.BetweenSteps between => new Asked(between.Question, AnswersTo(between, values, instrument)),
            _ => new Taken(Plain(values), instrument),
        };

    /// <summary>Values that were heard, and nobody said what they were read with: the instrument is the first proposed that
    /// can show them. Where none can, a person is asked.</summary>
    /// <param name="values">The values, each in the unit it is shown in.</param>
    /// <param name="proposed">The instruments of the kind, the one to propose first; one or more.</param>
    public static ReadOff Heard(IReadOnlyList<TypedNumber.Certain> values, IReadOnlyList<Instrument> proposed)
    {
        var judged = proposed.Select(one => (Instrument: one, Shown: Shown.By(one, values, InstrumentChoice.KnowsStepOf(one)))).ToList();
        if (judged.Find(one => one.Shown is Shown.Plainly) is { Instrument: { } fitting })
        {
            return new Taken(Plain(values), fitting);
        }

        // One that reaches that far and lacks the step only knows more of the value than one that does not reach it.
        var nearest = judged.Find(one => one.Shown is Shown.BetweenSteps) is { Instrument: { } reaching } ? reaching : proposed[0];
        return judged[0].Shown is Shown.Never { IsBeyondRange: true } beyond && nearest == proposed[0]
            ? new Asked($"{beyond.Problem} What was it read with?", [Another(values, nearest)])
            : By(nearest, values, []);
    }

    private static IReadOnlyList<ReadOffAnswer> AnswersTo(
        Shown.BetweenSteps between, IReadOnlyList<TypedNumber.Certain> values, Instrument instrument) =>
    [
        .. between.Choices.Select(choice => new ReadOffAnswer(
            Written(choice),
            string.Join(", ", choice.Zip(values, (one, given) => Printed.OnDisplay(one, instrument.OnRangeFor(choice).Resolution, given.Unit))),
            choice,
            instrument)),
        Another(values, instrument),
    ];

    private static ReadOffAnswer Another(IReadOnlyList<TypedNumber.Certain> values, Instrument instead)
    {
        var plain = Plain(values);
        var text = string.Join(", ", values.Select(value => Printed.Value(value.BaseValue, value.Unit)));
        return new($"another {Written(plain)}", $"{text}, another instrument was used", plain, InstrumentChoice.Another(instead));
    }

    private static string Better(IReadOnlyList<TypedNumber.Certain> values, IReadOnlyList<Instrument> others) =>
        others.FirstOrDefault(one => Shown.By(one, values, InstrumentChoice.KnowsStepOf(one)) is Shown.Plainly) is { } better
            ? $"Choose {better.Name}."
            : "Enter the meter it was read with under Instruments, and choose it.";

    private static double[] Plain(IReadOnlyList<TypedNumber.Certain> values) => [.. values.Select(value => value.BaseValue)];

    /// <summary>Numbers in the base unit as a form brings them back.</summary>
    public static string Written(IEnumerable<double> values) =>
        string.Join(';', values.Select(value => value.ToString("R", CultureInfo.InvariantCulture)));
}

/// <summary>An answer to what an instrument showed.</summary>
/// <param name="Meant">What a form brings back for it.</param>
/// <param name="Label">The answer in words.</param>
/// <param name="Values">The values it stands for, base unit.</param>
/// <param name="Instrument">The instrument it stands for.</param>
public sealed record ReadOffAnswer(string Meant, string Label, IReadOnlyList<double> Values, Instrument Instrument);
