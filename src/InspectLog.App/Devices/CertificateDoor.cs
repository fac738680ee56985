using System.Security.Cryptography.X509Certificates;
using InspectLog.App.Network;
using InspectLog.App.Ui;

namespace InspectLog.App.Devices;

/// <summary>What is to be had without HTTPS: the authority's certificate, a page that says what to do with it, and that
/// page's own look.</summary>
public static class CertificateDoor
{
    /// <summary>Address of the authority's certificate, DER.</summary>
    public const string File = "/authority.crt";

    private const string FileType = "application/x-x509-ca-cert";

    /// <summary>Answers everything that comes in by that door, and lets pass what comes in by others.</summary>
    public static IApplicationBuilder UseCertificateDoor(this IApplicationBuilder app) =>
        app.UseWhen(context => Doors.Of(context) == Door.Certificate, door =>
        {
            door.UseWhen(context => context.Request.Path.StartsWithSegments("/css"), look => look.UseStaticFiles());
            door.Run(Answer);
        });

    private static Task Answer(HttpContext context)
    {
        var certificates = context.RequestServices.GetRequiredService<WorkshopCertificates>();
        var (request, response) = (context.Request, context.Response);
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            return Task.CompletedTask;
        }

        if (request.Path == File)
        {
            return Results.Bytes(
                certificates.AuthorityCertificate.Export(X509ContentType.Cert), FileType, "inspectlog-workshop.crt").ExecuteAsync(context);
        }

        if (request.Path != "/")
        {
            response.Redirect("/");
            return Task.CompletedTask;
        }

        var addresses = context.RequestServices.GetRequiredService<ReachedAt>().Addresses;
        var phones = addresses.Phones.FirstOrDefault(one => one.Host == request.Host.Host) ?? addresses.Phones[0];
        return Page.Of<CertificatePage, CertificateView>(new(phones, certificates.Fingerprint)).ExecuteAsync(context);
    }
}

/// <summary>The page that explains the authority's certificate.</summary>
/// <param name="Phones">Where InspectLog itself is.</param>
/// <param name="Fingerprint">SHA-256 of the certificate.</param>
public sealed record CertificateView(Uri Phones, string Fingerprint);
