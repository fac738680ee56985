using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Vocabulary;

/// <summary>Composes a prompt for the speech model: a few example findings in the spelling that is wanted, those of the
/// open check and the workshop's own words for it first. Pure: the same sheet, check and words give the same prompt.
/// </summary>
public static class ExampleFindings
{
    /// <summary>The most characters of a prompt, which is some 80 of the model's tokens.</summary>
    public const int LongestPrompt = 240;

    private const int Observations = 3;

    // Own words are what the model cannot know; the rest of the prompt is for the spelling of numbers.
    private const int LongestOwnWords = LongestPrompt / 2;

    /// <summary>The prompt.</summary>
    /// <param name="sheet">The check sheet, with the vehicle's own limits where it has some.</param>
    /// <param name="openCheck">Id of the check open on the bench; or null.</param>
    /// <param name="ownWords">The workshop's own words for the sheet, in the order they were added; those of a check the
    /// sheet does not have say nothing.</param>
    /// <returns>Whole sentences with a space between them, <see cref="LongestPrompt"/> characters at most. No figure in
    /// it can be a value of the check it stands with, no cylinder is one of the engine's: see
    /// <see cref="ExampleFigures"/>.</returns>
    public static string Prompt(CheckSheet sheet, string? openCheck, IReadOnlyList<OwnWord> ownWords)
    {
        var open = openCheck is null ? null : sheet.Find(openCheck);
        var sentences = new ExampleSentences(sheet, new(sheet, open));
        var prompt = new List<string>();
        if (open is not null)
        {
            Add(prompt, [sentences.Of(open)], LongestPrompt);
        }

        var own = new List<string>();
        Add(own, InOrder(ownWords, open).Select(sentences.Of), LongestOwnWords);
        Add(prompt, own, LongestPrompt);
        var readings = OneOfEachUnit(sheet).Where(one => one.Check != open).Select(one => sentences.Reading(one.Check, one.Unit));
        Add(prompt, InTurn(readings, Observed(sheet, open).Select(sentences.Of)), LongestPrompt);
        return string.Join(' ', prompt);
    }

    // Each sentence that still fits; a shorter one may follow one that did not.
    private static void Add(List<string> to, IEnumerable<string?> sentences, int longest)
    {
        foreach (var sentence in sentences.OfType<string>())
        {
            if (to.Sum(one => one.Length + 1) + sentence.Length <= longest && !to.Contains(sentence))
            {
                to.Add(sentence);
            }
        }
    }

    // Those of the open check first; the ones added last are those the model has been heard to miss last.
    private static IEnumerable<OwnWord> InOrder(IReadOnlyList<OwnWord> words, Check? open) =>
        words.Reverse().OrderByDescending(word => word.Check == open?.Id);

    // Parts there is one of, which the readings do not speak of, before those of each cylinder.
    private static IEnumerable<Check> Observed(CheckSheet sheet, Check? open) => sheet.Checks
        .Where(check => check.Measurand is null && check != open && check.Conditions.Any(condition => condition.Meaning == ConditionMeaning.Bad))
        .OrderBy(check => check.PerCylinder)
        .Take(Observations);

    private static IEnumerable<string?> InTurn(IEnumerable<string?> readings, IEnumerable<string?> observations)
    {
        using var left = observations.GetEnumerator();
        foreach (var reading in readings)
        {
            yield return reading;
            if (left.MoveNext())
            {
                yield return left.Current;
            }
        }
    }

    // One check for each unit people speak of, in the order of the sheet. Lengths are said in thou as well: of two checks
    // of a length the second is in thou.
    private static IEnumerable<(Check Check, Unit Unit)> OneOfEachUnit(CheckSheet sheet)
    {
        var shown = new HashSet<Unit>();
        foreach (var check in sheet.Checks)
        {
            if (check.Measurand is not { } measurand)
            {
                continue;
            }

            var unit = measurand.DisplayUnit == Units.Millimetre && shown.Contains(Units.Millimetre) ? Units.Thou : measurand.DisplayUnit;
            if (shown.Add(unit))
            {
                yield return (check, unit);
            }
        }
    }
}
