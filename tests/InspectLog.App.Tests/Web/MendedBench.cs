using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>Shorthand for tests that put right what is on the bench of Marigold.</summary>
internal static class MendedBench
{
    public static InspectionState Inspection(this TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];

    public static int CountOfEntries(this TestApp app) => app.Garage.Entries("marigold").Count;

    /// <summary>Types a reading and returns its sequence.</summary>
    public static async Task<long> MeasureAsync(
        this TestApp app, string bench, string check, string value, string unit, string cylinder = "")
    {
        await app.PostForRedirectAsync($"{bench}/readings", ("check", check), ("cylinder", cylinder), ("value", value), ("unit", unit));
        return app.Inspection().Readings[^1].Sequence;
    }

    /// <summary>Sees a condition and returns the record's sequence.</summary>
    public static async Task<long> SeeAsync(this TestApp app, string bench, string check, string condition, string cylinder = "")
    {
        await app.PostForRedirectAsync($"{bench}/observations", ("check", check), ("cylinder", cylinder), ("condition", condition));
        return app.Inspection().Observations[^1].Sequence;
    }

    /// <summary>Does something and returns the record's sequence.</summary>
    public static async Task<long> DoAsync(this TestApp app, string bench, string check, string action, string cylinder = "")
    {
        await app.PostForRedirectAsync($"{bench}/actions", ("check", check), ("cylinder", cylinder), ("action", action));
        return app.Inspection().Actions[^1].Sequence;
    }

    /// <summary>What the form that puts an entry right sends when nothing in it is changed.</summary>
    public static async Task<Dictionary<string, string>> FilledAsync(this TestApp app, string bench, long entry)
    {
        var page = await app.PageAsync($"{bench}/entries/{entry}/amend");
        return FieldsOf((IHtmlFormElement)page.QuerySelector($"form[action='{bench}/entries/{entry}/amend']")!);
    }

    /// <summary>Sends that form with something else in some of its fields.</summary>
    public static async Task<HttpResponseMessage> AmendAsync(
        this TestApp app, string bench, long entry, params (string Name, string Value)[] changes)
    {
        var fields = await app.FilledAsync(bench, entry);
        foreach (var (name, value) in changes)
        {
            fields[name] = value;
        }

        return await app.PostAsync($"{bench}/entries/{entry}/amend", [.. fields.Select(field => (field.Key, field.Value))]);
    }

    /// <summary>The text of an entry in Captured, with spaces as one.</summary>
    public static async Task<string> CapturedAsync(this TestApp app, string bench, long entry) =>
        TextOf((await app.PageAsync(bench)).QuerySelector($"#captures #item-{entry}")!);

    public static string TextOf(IElement element) =>
        string.Join(' ', element.TextContent.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Closes the inspection by its page, with a reason for whatever is missing.</summary>
    public static async Task CloseAsync(this TestApp app, string bench)
    {
        var page = await app.PageAsync($"{bench}/close");
        var reasons = page.QuerySelectorAll("input[name^='reason-'], input[name^='waive-']")
            .Select(field => (field.GetAttribute("name")!, "Not today"));
        var hidden = page.QuerySelectorAll("main form input[type=hidden]")
            .Select(field => (field.GetAttribute("name")!, field.GetAttribute("value") ?? ""));
        await app.PostForRedirectAsync($"{bench}/close", [.. reasons, .. hidden]);
        Assert.True(app.Inspection().IsClosed);
    }

    private static Dictionary<string, string> FieldsOf(IHtmlFormElement form)
    {
        var fields = new Dictionary<string, string>();
        foreach (var element in form.Elements)
        {
            switch (element)
            {
                case IHtmlInputElement { Type: "checkbox", IsChecked: false }:
                    break;
                case IHtmlInputElement { Name: { Length: > 0 } name } input:
                    fields[name] = input.Value;
                    break;
                case IHtmlSelectElement { Name: { Length: > 0 } name } select:
                    fields[name] = select.Value ?? "";
                    break;
                case IHtmlTextAreaElement { Name: { Length: > 0 } name } area:
                    fields[name] = area.Value;
                    break;
            }
        }

        return fields;
    }
}
