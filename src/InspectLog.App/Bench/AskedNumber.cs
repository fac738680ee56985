using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>A question about typed numbers that has to be answered before they are recorded: they could mean two things,
/// or lie outside what the check can sensibly read.</summary>
/// <param name="Question">What is asked.</param>
/// <param name="Answers">The answers to choose from; one where it is only asked whether it is meant. Who meant neither
/// types it anew.</param>
public sealed record AskedNumber(string Question, IReadOnlyList<NumberAnswer> Answers)
{
    /// <summary>Which of two meanings a number has. Where one alone is possible it is still asked about, since nothing is
    /// guessed; the other is not offered, and why is said.</summary>
    /// <param name="unsure">The number.</param>
    /// <param name="possible">Those of its meanings that could be recorded; one or more.</param>
    /// <param name="whyNot">Why another could not; null where all could.</param>
    public static AskedNumber Which(
        TypedNumber.Ambiguous unsure, IReadOnlyList<TypedNumber.Certain> possible, string? whyNot) => new(
        possible.Count == unsure.Choices.Count
            ? unsure.Question
            : $"{whyNot} Is it {string.Join(" or ", possible.Select(choice => Printed.Value(choice.BaseValue, choice.Unit)))}?".TrimStart(),
        [.. possible.Select(choice => new NumberAnswer(Written([choice.BaseValue]), Printed.Value(choice.BaseValue, choice.Unit)))]);

    /// <summary>Whether numbers are meant as typed; null where all of them are plausible.</summary>
    /// <param name="typed">The numbers.</param>
    /// <param name="check">Their check; it is a measured one.</param>
    public static AskedNumber? WhetherMeant(IReadOnlyList<TypedNumber.Certain> typed, Check check)
    {
        var plausible = check.Measurand!.Plausible;
        var odd = typed.Where(number => !plausible.Holds(number.BaseValue)).ToList();
        if (odd.Count == 0)
        {
            return null;
        }

        var values = Join(odd);
        var span = Printed.Span(plausible.From, plausible.To, check.Measurand.DisplayUnit);
        return new(
            $"{values}: that is unlikely for {check.ShortTitle}, which lies within {span} as a rule. Is it meant?",
            [new NumberAnswer(Written(typed.Select(number => number.BaseValue)), $"Yes, {Join(typed)} is meant")]);
    }

    /// <summary>What an instrument showed, where it cannot have shown the numbers as typed.</summary>
    public static AskedNumber Shown(ReadOff.Asked asked) =>
        new(asked.Question, [.. asked.Answers.Select(answer => new NumberAnswer(answer.Meant, answer.Label))]);

    /// <summary>Numbers in the base unit as the field <c>meant</c> brings them back.</summary>
    public static string Written(IEnumerable<double> values) => ReadOff.Written(values);

    private static string Join(IEnumerable<TypedNumber.Certain> numbers) =>
        string.Join(", ", numbers.Select(number => Printed.Value(number.BaseValue, number.Unit)));
}

/// <summary>An answer to a question about typed numbers.</summary>
/// <param name="Meant">What the field <c>meant</c> brings back.</param>
/// <param name="Label">The answer in words.</param>
public sealed record NumberAnswer(string Meant, string Label);
