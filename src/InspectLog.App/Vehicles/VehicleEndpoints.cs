using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Media;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal;
using InspectLog.Photos;

namespace InspectLog.App.Vehicles;

/// <summary>Vehicles: adding, showing and describing them, and starting an inspection.</summary>
public static class VehicleEndpoints
{
    private const string Base = "/vehicles/{vehicle}";

    public static void MapVehicles(this IEndpointRouteBuilder app)
    {
        var keep = app.For(Policies.Keep, Policies.Keep);
        keep.MapGet(Links.NewVehicle, NewForm).WithName("new-vehicle");
        keep.MapPost(Links.NewVehicle, Add).WithName("add-vehicle");
        var vehicle = app.MapGroup(Base).WhoMay(Policies.Look, Policies.Keep);
        vehicle.MapGet("/", Show).WithName("vehicle");
        vehicle.MapGet("/describe", DescribeForm).WithName("describe-form");
        vehicle.MapPost("/describe", Describe).WithName("describe");
        vehicle.MapPost("/picture", Picture)
            .WithName("picture")
            .WithMetadata(new RequestSizeLimit(PhotoIntake.LargestFile));
        vehicle.MapGet("/journal", Journal).WithName("journal");
        app.MapGroup(Base).WhoMay(Policies.Look, Policies.Record).MapPost("/inspections", Start).WithName("start-inspection");
    }

    private static IResult NewForm(Garage garage) => Form(garage, null, null);

    private static async Task<IResult> Add(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (VehicleForm.Description(form) is not { } described)
        {
            return Form(garage, null, form.Refused("vehicle"));
        }

        var added = new VehicleAdded(described.Name, described.Description, described.Engine);
        var id = garage.AddVehicle(
            PersonAtWork.Of(context), added, VehicleForm.PrivateFacts(form, null) is { } facts ? [facts] : []);
        return Results.Redirect(Links.Vehicle(id));
    }

    private static IResult Show(
        HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle, string? by, string? before) =>
        garage.FindVehicle(vehicle) is { } state
            ? Page.Of<VehiclePage, VehicleView>(
                VehicleViewBuilder.Build(state, sheets, time.GetLocalNow(), by, Offered(context, garage), null, garage.Problems, before))
            : Results.NotFound();

    private static IResult DescribeForm(Garage garage, string vehicle) =>
        garage.FindVehicle(vehicle) is null ? Results.NotFound() : Form(garage, vehicle, null);

    private static async Task<IResult> Describe(HttpContext context, Garage garage, string vehicle)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (VehicleForm.Description(form) is not { } described)
        {
            return garage.FindVehicle(vehicle) is null
                ? Results.NotFound()
                : Form(garage, vehicle, form.Refused("vehicle"));
        }

        garage.Append(vehicle, PersonAtWork.Of(context), now => VehicleForm.PrivateFacts(form, now.Private) is { } facts
            ? [described, facts]
            : [described]);
        return Results.Redirect(Links.Vehicle(vehicle));
    }

    private static async Task<IResult> Picture(
        HttpContext context, Garage garage, IncomingPhotos incoming, PhotoCopies copies, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is null)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (form.Files.Count == 0)
        {
            form.Refuse("photo", "Choose a picture first.");
            return Form(garage, vehicle, form.Refused("picture"));
        }

        var photo = await incoming.TakeAsync(
            async stop => await Body.ReadAsync(form.Files[0], PhotoIntake.LargestFile, stop),
            message => form.Refuse("photo", message),
            context.RequestAborted);
        if (photo is null)
        {
            return Form(garage, vehicle, form.Refused("picture"));
        }

        using (photo)
        {
            garage.Append(vehicle, PersonAtWork.Of(context), _ => [new VehiclePictured(photo.Keep(garage.Media))]);
            await photo.ShowAsync();
        }

        if (copies.SlipOf(photo.Sha256)?.Fault is { } fault)
        {
            form.Refuse("photo", $"The picture is kept, but cannot be shown: {fault.Words()}. Choose another, or take it again.");
            return Form(garage, vehicle, form.Refused("picture"));
        }

        return Results.Redirect(Links.Vehicle(vehicle));
    }

    private static IResult Journal(HttpContext context, Garage garage, SheetLibrary sheets, string vehicle, string? upto) =>
        garage.FindVehicle(vehicle) is { } state
            ? Page.Of<JournalPage, JournalView>(JournalView.Of(state, sheets, garage.Entries(vehicle), upto, garage.Problems) with
            {
                Found = FoundPart.Of(context.Request),
                Damage = garage.DamagedLines(vehicle),
            })
            : Results.NotFound();

    private static async Task<IResult> Start(
        HttpContext context, Garage garage, SheetLibrary sheets, TimeProvider time, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is not { } state)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var technician = form.Text("technician") is { Length: > 0 } name ? name : PersonAtWork.Of(context).Name;
        if (PersonName.Problem(technician) is { } problem)
        {
            form.Refuse("technician", problem);
        }

        var odometer = OdometerFields.Reading(form, "odometer");
        if (StartOffer.To(state, sheets).Read(form) is not { } sheet)
        {
            return Page.Of<VehiclePage, VehicleView>(
                VehicleViewBuilder.Build(state, sheets, time.GetLocalNow(), null, technician, form.Refused("start"), garage.Problems),
                StatusCodes.Status422UnprocessableEntity);
        }

        var unit = odometer is null ? null : OdometerFields.Unit(form, "odometerUnit");
        sheets.Keep(sheet); // before the entry that pins it
        var after = garage.Append(vehicle, PersonAtWork.As(context, technician), now => now.OpenInspection is null
            ? [new InspectionStarted(sheet.Id, sheet.Version, sheet.Sha256, technician, odometer, unit)
                {
                    Rule = sheet.Rule.Id,
                    Coverage = sheet.Evaluation.IsUsualCoverage ? null : sheet.Evaluation.Coverage,
                    Cylinders = sheet.Cylinders,
                }]
            : []);
        PersonAtWork.Remember(context, technician);
        return Results.Redirect(Links.Inspection(vehicle, after.OpenInspection!.Number));
    }

    /// <summary>Who is offered first as the one who inspects: whoever works in this browser, or else worked last.</summary>
    private static string Offered(HttpContext context, Garage garage) =>
        PersonAtWork.Chosen(context) ?? KnownPeople.Of(garage).FirstOrDefault(PersonAtWork.Nobody);

    private static IResult Form(Garage garage, string? vehicle, RefusedForm? refused) =>
        Page.Of<VehicleFormPage, VehicleFormView>(
            new VehicleFormView(vehicle is null ? null : garage.FindVehicle(vehicle), refused, garage.Problems),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
