using System.Text.RegularExpressions;

namespace InspectLog.Checks.Sheets;

/// <summary>Reads one check of a sheet file.</summary>
internal static partial class CheckReader
{
    public static Check Read(SheetNode node, SheetParts parts)
    {
        node.Object("id", "title", "shortTitle", "question", "placeNoun", "places", "parts", "measurand", "conditions", "actions",
            "method", "safeState", "disturbs", "cautions", "urgency", "spoken");
        var check = new Check
        {
            Id = Id(node["id"]),
            Title = node["title"].Text(),
            ShortTitle = node["shortTitle"].Text(),
            Question = node["question"].Text(),
            Places = PlaceReader.Read(node),
            Parts = node.Optional("parts") is { } about ? parts.Several(about) : [],
            Measurand = node.Optional("measurand") is { } measurand ? MeasurandReader.Read(measurand) : null,
            Conditions = Conditions(node["conditions"]),
            Actions = Actions(node["actions"]),
            Method = node["method"].Texts(atLeastOne: true),
            SafeState = node["safeState"].Texts(atLeastOne: true),
            Disturbs = Disturbances(node["disturbs"], parts),
            Cautions = node["cautions"].Texts(),
            Urgency = node.Optional("urgency") is { } urgency ? Enum.Parse<Urgency>(urgency.Word("now", "soon", "later"), ignoreCase: true) : null,
            Spoken = Spoken(node["spoken"]),
        };
        SheetParts.RefusePlacesWhereThereAreNone(node, check);
        return check.Measurand is null && check.Conditions.Count == 0
            ? throw node.Wrong("the check has neither a measurand nor conditions, so nothing could be recorded for it.")
            : check;
    }

    public static string Id(SheetNode node)
    {
        var id = node.Text();
        return IdForm().IsMatch(id)
            ? id
            : throw node.Wrong($"'{id}' cannot be an id. Use lower-case letters and figures, joined by hyphens.");
    }

    private static IReadOnlyList<Condition> Conditions(SheetNode node)
    {
        var conditions = node.List(Condition);
        return SheetNode.FirstRepeated(conditions.Select(condition => condition.Id)) is { } repeated
            ? throw node.Wrong($"the condition '{repeated}' stands in the list twice.")
            : conditions;
    }

    private static Condition Condition(SheetNode node)
    {
        node.Object("id", "meaning", "phrases");
        var id = node["id"].Text();
        if (!ConditionForm().IsMatch(id))
        {
            throw node["id"].Wrong($"'{id}' cannot be a condition. Use lower-case words.");
        }

        var meaning = node["meaning"].Word("good", "attention", "bad");
        return new Condition(id, Enum.Parse<ConditionMeaning>(meaning, ignoreCase: true), node["phrases"].Texts());
    }

    private static IReadOnlyList<string> Actions(SheetNode node)
    {
        node.List(action => action.Word(PartActions.All));
        return node.Texts();
    }

    private static IReadOnlyList<Disturbance> Disturbances(SheetNode node, SheetParts parts)
    {
        var disturbances = node.List(one => Disturbance(one, parts));
        return SheetNode.FirstRepeated(disturbances.Select(disturbance => disturbance.Id)) is { } repeated
            ? throw node.Wrong($"the disturbance '{repeated}' stands in the list twice.")
            : disturbances;
    }

    private static Disturbance Disturbance(SheetNode node, SheetParts parts)
    {
        node.Object("id", "part", "text", "tie", "limit");
        return new Disturbance(Id(node["id"]), node["text"].Text(), node["tie"].Text())
        {
            Part = node.Optional("part") is { } part ? parts.One(part) : null,
            Limit = node.Optional("limit") is { } limit ? Limit(limit) : null,
        };
    }

    private static TimeLimit Limit(SheetNode node)
    {
        node.Object("minutes", "because", "source");
        var minutes = node["minutes"].Number();
        return minutes is > 0 and <= TimeLimit.MostMinutes
            ? new(TimeSpan.FromMinutes(minutes), node["because"].Text(), node["source"].Text())
            : throw node["minutes"].Wrong($"a limit of time is more than 0 and at most {TimeLimit.MostMinutes} minutes.");
    }

    private static SpokenNames Spoken(SheetNode node)
    {
        node.Object("subjects", "parts", "mainForActions");
        return new SpokenNames(
            node["subjects"].Texts(atLeastOne: true), node["parts"].Texts(), node["mainForActions"].YesNo());
    }

    [GeneratedRegex(@"^[a-z][a-z0-9]*(-[a-z0-9]+)*\z")]
    private static partial Regex IdForm();

    [GeneratedRegex(@"^[a-z]+( [a-z]+)*\z")]
    private static partial Regex ConditionForm();
}
