#pragma once
// How a document leaves a screen: into a file that she names, or on paper through the system's own
// dialog. What became of it is said in a notice on the screen.

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

#include "indexer/sheet/page.h"
#include "indexer/store/library.h"
#include "ui/painter/paint.h"

class QPrinter;
class QWidget;

namespace quarterturn {

class Job;
class Notice;
class Session;

class WaysOut : public QObject {
    Q_OBJECT
  public:
    // Runs on a thread of its own, with a library of its own.
    using LayOut = std::function<Document(Library&)>;

    // `window` owns it, and the dialogs open over it.
    WaysOut(Session& session, Notice& notice, QWidget& window);

    // The file she names, with `ending` where she names none. `name` is proposed, without it; the
    // kinds are those of Qt's file dialog. Nothing when she thinks better of it.
    std::optional<Path> ask_file(const QString& title, const std::string& name,
                                 const QString& ending, const QString& kinds);

    // PDF, PNG or JPEG by the file's ending.
    void save(const LayOut& lay_out, const Path& file);
    // What `write` writes, on a thread of its own.
    void save_as(const std::function<Written(Library&)>& write);
    void ask_and_print(const Document& document, const QString& title);
    // The same for pages that take a while to be laid out.
    void lay_out_and_print(const LayOut& lay_out, const QString& title);

  private:
    void say_saved(const Written& written);
    void print_on(const std::shared_ptr<QPrinter>& printer, const Document& document);
    void tell_failure(Job& job);

    Session& session_;
    Notice& notice_;
    QWidget& window_;
};

}  // namespace quarterturn
