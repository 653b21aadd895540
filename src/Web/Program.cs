using Nookwright.Web.Hosting;

return await WebOptions.Run(args, WebServer.Run);
