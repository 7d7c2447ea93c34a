#include "ui/printing/ways_out.h"

#include <QFileDialog>
#include <QPointer>
#include <QPrintDialog>
#include <QPrinter>
#include <QStandardPaths>

#include "indexer/disk/lies_in.h"
#include "ui/printing/printing.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/words.h"

namespace quarterturn {

WaysOut::WaysOut(Session& session, Notice& notice, QWidget& window)
    : QObject(&window), session_(session), notice_(notice), window_(window) {}

std::optional<Path> WaysOut::ask_file(const QString& title, const std::string& name,
                                      const QString& ending, const QString& kinds) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString file = QFileDialog::getSaveFileName(
        &window_, title, folder + QLatin1Char('/') + from_utf8(name) + ending, kinds);
    if (file.isEmpty()) return std::nullopt;
    const bool named = QFileInfo(file).suffix().isEmpty();
    const Path path(to_utf8(named ? file + ending : file));
    if (!lies_in(path, session_.library().folder())) return path;
    notice_.say(tr("%1 lies in the library's own folder, where nothing else is kept: choose a "
                   "place outside it.")
                    .arg(file));
    return std::nullopt;
}

void WaysOut::save(const LayOut& lay_out, const Path& file) {
    save_as([lay_out, file, &decoder = session_.decoder()](Library& library) {
        const Document document = lay_out(library);
        const bool pictures = !picture_format(file).empty();
        return pictures ? write_pictures(document, decoder, library.disk(), file)
                        : write_pdf(document, decoder, library.disk(), file);
    });
}

void WaysOut::save_as(const std::function<Written(Library&)>& write) {
    notice_.say(tr("Saving…"));
    Job* job = session_.start<Written>([write](Library& library, Job&) { return write(library); },
                                       [ways = QPointer(this)](const Written& written) {
                                           if (ways) ways->say_saved(written);
                                       });
    tell_failure(*job);
}

void WaysOut::say_saved(const Written& written) {
    QStringList lines;
    for (const Path& file : written.files) lines << tr("Saved: %1").arg(from_utf8(file.string()));
    for (const std::string& problem : written.problems) lines << from_utf8(problem);
    if (!written.older.empty()) lines << from_utf8(words_of_older(written));
    notice_.say(lines.join(QLatin1Char('\n')));
}

void WaysOut::ask_and_print(const Document& document, const QString& title) {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    set_paper(*printer, document);
    QPrintDialog dialog(printer.get(), &window_);
    dialog.setWindowTitle(title);
    if (dialog.exec() == QDialog::Accepted) print_on(printer, document);
}

void WaysOut::lay_out_and_print(const LayOut& lay_out, const QString& title) {
    notice_.say(tr("Laying out the pages…"));
    Job* job =
        session_.start<Document>([lay_out](Library& library, Job&) { return lay_out(library); },
                                 [ways = QPointer(this), title](const Document& document) {
                                     if (!ways) return;
                                     ways->notice_.say({});
                                     ways->ask_and_print(document, title);
                                 });
    tell_failure(*job);
}

void WaysOut::print_on(const std::shared_ptr<QPrinter>& printer, const Document& document) {
    notice_.say(tr("Printing…"));
    Job* job = session_.start<PagesToPrint>(
        [document, &decoder = session_.decoder()](Library& library, Job&) {
            return pages_to_print(document, decoder, library.disk());
        },
        [notice = QPointer(&notice_), printer](const PagesToPrint& pages) {
            const bool printed = print_pages(*printer, pages);
            if (!notice) return;
            notice->say(printed ? tr("Sent to the printer.")
                                : tr("The printer did not take it. See whether it is switched on "
                                     "and has paper, and print again."));
        });
    tell_failure(*job);
}

void WaysOut::tell_failure(Job& job) {
    connect(&job, &Job::failed, &notice_, &Notice::say);
}

}  // namespace quarterturn
