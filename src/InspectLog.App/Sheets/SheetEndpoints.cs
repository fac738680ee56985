using InspectLog.App.Access;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal;

namespace InspectLog.App.Sheets;

/// <summary>The check sheets, to read.</summary>
public static class SheetEndpoints
{
    public static void MapSheets(this IEndpointRouteBuilder app)
    {
        var sheetPages = app.For(Policies.Visit);
        sheetPages.MapGet(Links.Sheets, ListSheets).WithName("sheets");
        sheetPages.MapGet(Links.Sheets + "/{id}", (Garage garage, SheetLibrary sheets, string id, string? sha256) =>
            (sha256 is null ? BuiltInSheets.Find(id) : sheets.Find(sha256)) is { } sheet
            ? Page.Of<SheetPage, SheetView>(new SheetView(sheet, garage.Problems))
            : Results.NotFound()).WithName("sheet");
    }

    private static IResult ListSheets(Garage garage) =>
        Page.Of<SheetsPage, SheetsView>(new SheetsView(BuiltInSheets.All, garage.Problems));
}
