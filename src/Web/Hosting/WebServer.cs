using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Nookwright.Web.Sessions;
using Nookwright.Web.Shell;

namespace Nookwright.Web.Hosting;

/// <summary>Serves the page on this machine, and on no other.</summary>
public static class WebServer
{
    /// <summary>Serves until the program is stopped.</summary>
    /// <returns>0, or 2 when it could not start with what was asked for.</returns>
    public static async Task<int> Run(WebOptions options)
    {
        var isMakersOwn = options.Folder is null;
        var folder = isMakersOwn ? MakersFolder.Open() : new JobFolder(options.Folder!);
        await using var server = Build(options, folder);
        try
        {
            await server.StartAsync();
        }
        catch (IOException trouble)
        {
            Console.Error.WriteLine(
                $"Port {options.Port} on 127.0.0.1 cannot be used ({trouble.Message.TrimEnd('.')}). Stop the other program, or choose "
                    + "another port with --port; --port 0 takes any free one."
            );
            return 2;
        }
        Announce(server, folder, options, isMakersOwn ? MakersFolder.FirstJob(folder) : null);
        await server.WaitForShutdownAsync();
        return 0;
    }

    private static WebApplication Build(WebOptions options, JobFolder folder)
    {
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }
        );
        builder
            .WebHost.UseStaticWebAssets()
            .ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, options.Port));
        builder.Logging.ClearProviders().AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        // Its keys are for this run only and never stored, which it warns about.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Configuration["AllowedHosts"] = "127.0.0.1;localhost";
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddSingleton(folder).AddSingleton<JobSessions>().AddSingleton(TimeProvider.System);
        var server = builder.Build();
        server.UseExceptionHandler("/trouble");
        server.UseStatusCodePagesWithReExecute("/nothing-here");
        server.Use(PagePolicy.Apply);
        server.UseAntiforgery();
        server.MapStaticAssets();
        LookFiles.Map(server);
        PacketFile.Map(server);
        server
            .MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(mode => mode.ContentSecurityFrameAncestorsPolicy = null);
        return server;
    }

    private static void Announce(WebApplication server, JobFolder folder, WebOptions options, string? job)
    {
        var address = server
            .Services.GetRequiredService<IServer>()
            .Features.Get<IServerAddressesFeature>()!
            .Addresses.First();
        Console.WriteLine($"Nookwright is at {address}");
        Console.WriteLine($"Jobs are in {folder.Path}");
        Console.WriteLine("Stop it with Ctrl+C; every edit is saved as it is made.");
        if (options.OpensBrowser)
            BrowserOpening.TryOpen(job is null ? address : $"{address}/{JobAddress.Of(job)}");
    }
}
