import "@jupyterlab/application/style/index.css";
import "@jupyterlab/notebook/style/index.css";
import "@jupyterlab/codemirror/style/index.css";
import "@jupyterlab/rendermime/style/index.css";
import "@jupyter-widgets/base/css/index.css";
import "@jupyter-widgets/controls/css/widgets-base.css";

import { CodeMirrorEditorFactory, CodeMirrorMimeTypeService, EditorExtensionRegistry, EditorLanguageRegistry, EditorThemeRegistry, ybinding } from "@jupyterlab/codemirror";
import { DocumentManager } from "@jupyterlab/docmanager";
import { DocumentRegistry } from "@jupyterlab/docregistry";
import { NotebookActions, NotebookModelFactory, NotebookPanel, NotebookWidgetFactory, StaticNotebook } from "@jupyterlab/notebook";
import { RenderMimeRegistry, standardRendererFactories } from "@jupyterlab/rendermime";
import { ServerConnection, ServiceManager } from "@jupyterlab/services";
import { WidgetManager, WidgetRenderer } from "@jupyter-widgets/jupyterlab-manager";
import * as base from "@jupyter-widgets/base";
import * as controls from "@jupyter-widgets/controls";
import { Widget } from "@lumino/widgets";

const origin = window.location.origin + "/";
const services = new ServiceManager({ serverSettings: ServerConnection.makeSettings({ baseUrl: origin, wsUrl: origin.replace("http", "ws"), token: "" }) });

async function open(path) {
  await services.ready;
  const rendermime = new RenderMimeRegistry({ initialFactories: standardRendererFactories });
  const registry = new DocumentRegistry();
  const documents = new DocumentManager({ registry, manager: services, opener: { open() {}, opened: { connect() { return false; }, disconnect() { return false; } } } });
  const themes = new EditorThemeRegistry();
  for (const theme of EditorThemeRegistry.getDefaultThemes()) themes.addTheme(theme);
  const languages = new EditorLanguageRegistry();
  const extensions = new EditorExtensionRegistry();
  for (const make of EditorExtensionRegistry.getDefaultExtensions({ themes })) extensions.addExtension(make);
  extensions.addExtension({ name: "shared-model-binding", factory: options => EditorExtensionRegistry.createImmutableExtension(ybinding({ ytext: options.model.sharedModel.ysource })) });
  const editors = new CodeMirrorEditorFactory({ extensions, languages });
  registry.addModelFactory(new NotebookModelFactory({}));
  registry.addWidgetFactory(new NotebookWidgetFactory({
    name: "Notebook", modelName: "notebook", fileTypes: ["notebook"], defaultFor: ["notebook"], preferKernel: true, canStartKernel: true, rendermime,
    contentFactory: new NotebookPanel.ContentFactory({ editorFactory: editors.newInlineEditor }), mimeTypeService: new CodeMirrorMimeTypeService(languages),
    notebookConfig: { ...StaticNotebook.defaultNotebookConfig, windowingMode: "none" },
  }));

  const panel = documents.open(path, "Notebook");
  const widgets = new WidgetManager(panel.context, rendermime, { saveState: false });
  for (const [name, version, exports] of [["@jupyter-widgets/base", base.JUPYTER_WIDGETS_VERSION, base], ["@jupyter-widgets/controls", controls.JUPYTER_CONTROLS_VERSION, controls]]) widgets.register({ name, version, exports });
  // The panel works with a copy of the registry that belongs to it.
  for (const each of [rendermime, panel.content.rendermime])
    each.addFactory({ safe: false, mimeTypes: ["application/vnd.jupyter.widget-view+json"], createRenderer: options => new WidgetRenderer(options, widgets) }, -10);
  panel.id = "main";
  Widget.attach(panel, document.body);
  const fit = () => panel.update();
  window.addEventListener("resize", fit);
  await panel.context.ready;
  await panel.sessionContext.ready;
  const kernel = panel.sessionContext.session.kernel;
  await kernel.info;
  window.notebook = { panel, kernel, runAll: () => NotebookActions.runAll(panel.content, panel.sessionContext), version: LAB_VERSION };
  document.body.dataset.ready = kernel.name;
}

open(new URLSearchParams(window.location.search).get("path")).catch(problem => {
  document.body.dataset.problem = String(problem && problem.stack || problem);
});
