using Nookwright.Paper;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Hosting;

/// <summary>A job's packet, made when it is asked for.</summary>
public static class PacketFile
{
    /// <summary>Serves it.</summary>
    public static void Map(WebApplication server) => server.MapGet("/job/{job}/packet.pdf", Make);

    private static async Task<IResult> Make(
        string job,
        JobSessions sessions,
        TimeProvider clock,
        CancellationToken stop
    )
    {
        var (session, refusals) = sessions.Of(job);
        if (session is null)
            return Results.Text(string.Join('\n', refusals), statusCode: StatusCodes.Status404NotFound);
        var book = await session.Planned(stop);
        var pdf = new MemoryStream();
        Packet.Write(book, DateOnly.FromDateTime(clock.GetLocalNow().DateTime), pdf);
        return Results.File(pdf.ToArray(), "application/pdf", $"{job}.pdf");
    }
}
