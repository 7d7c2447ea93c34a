#include "ui/settings/library_part.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QUrl>

#include "ui/shell/new_library_part.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

LibraryPart::LibraryPart(Session& session)
    : SettingsPart(tr("Library"), tr("Photos and records lie together in one folder:")),
      session_(session),
      folder_(make_text({})),
      notice_(new Notice) {
    column()->addWidget(folder_);
    QPushButton* show = make_button(tr("Show the folder"));
    QPushButton* another = make_button(tr("Open another library…"));
    connect(show, &QPushButton::clicked, this, &LibraryPart::show_folder);
    connect(another, &QPushButton::clicked, this, &LibraryPart::open_another);
    QHBoxLayout* row = make_row(2);
    row->addWidget(show);
    row->addWidget(another);
    row->addStretch();
    column()->addLayout(row);
    column()->addWidget(notice_);
    column()->addWidget(make_quiet(tr(
        "Other users of this laptop cannot look into it, but whoever takes the laptop or its disk "
        "can, unless the library is locked: let the system encrypt the disk, which Debian offers "
        "when it is installed, and have the screen locked while you are away.")));
    column()->addWidget(make_hairline());
    column()->addWidget(make_heading(tr("Start a new library")));
    column()->addWidget(new NewLibraryPart(session_, make_button(tr("Start here"))));
}

void LibraryPart::refresh() {
    folder_->setText(from_utf8(session_.library().folder().native()));
}

void LibraryPart::show_folder() {
    const QString folder = from_utf8(session_.library().folder().native());
    const bool shown = QDesktopServices::openUrl(QUrl::fromLocalFile(folder));
    notice_->say(shown ? QString()
                       : tr("No program on this computer shows folders. Open %1 where you look at "
                            "files.")
                             .arg(isolated(folder)));
}

void LibraryPart::open_another() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder of the library"));
    if (folder.isEmpty()) return;
    const Path library(to_utf8(folder));
    if (!session_.wants_passphrase(library)) return notice_->say(session_.open(library));
    if (session_.work() != nullptr) return notice_->say(tr("Wait until the work has ended."));
    session_.close_for({tr("Opening the library"), library, [](Job&) { return QString(); }});
}

}  // namespace quarterturn
