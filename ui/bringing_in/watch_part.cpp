#include "ui/bringing_in/watch_part.h"

#include <QFileDialog>
#include <QStandardPaths>

#include "ui/bringing_in/folder_watch.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

WatchPart::WatchPart(Session& session, QWidget* parent)
    : QFrame(parent),
      watch_(FolderWatch::of(session)),
      state_(make_text({})),
      notice_(new Notice),
      again_(make_button({})),
      button_(make_button({})) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(2));
    column->addWidget(make_heading(tr("While the client is in the chair")));
    column->addWidget(state_);
    column->addWidget(notice_);
    QHBoxLayout* row = make_row(2);
    row->addWidget(again_);
    row->addWidget(button_);
    row->addStretch();
    column->addLayout(row);
    connect(again_, &QPushButton::clicked, this, &WatchPart::watch_again);
    connect(button_, &QPushButton::clicked, this, &WatchPart::choose_or_stop);
    connect(&watch_, &FolderWatch::changed, this, &WatchPart::show_state);
    show_state();
}

void WatchPart::choose_or_stop() {
    if (!watch_.folder().empty()) return watch_.stop();
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Folder to watch"),
        QStandardPaths::writableLocation(QStandardPaths::PicturesLocation));
    if (!folder.isEmpty()) watch_.start(to_utf8(folder));
}

void WatchPart::watch_again() {
    if (const Path before = watch_.watched_before(); !before.empty()) watch_.start(before);
}

QString WatchPart::state() const {
    if (watch_.folder().empty()) {
        return tr(
            "Watch a folder that photos arrive in, through a cable, a card or a sync "
            "service. Each is brought in once it has fully arrived, and the head plan fills.");
    }
    //: a folder, and how many photos came in since it is watched
    return tr("Watching %1. %2")
        .arg(from_utf8(watch_.folder().native()),
             tr("%n photo(s) brought in so far.", nullptr, watch_.brought_in()));
}

QString WatchPart::refused() const {
    QStringList sentences;
    if (!watch_.problem().isEmpty()) sentences << watch_.problem();
    for (const RefusedFile& file : watch_.refused()) {
        sentences << tr("%1: %2").arg(from_utf8(file.file.filename().native()),
                                      from_utf8(file.reason));
    }
    return sentences.join(QLatin1Char('\n'));
}

void WatchPart::show_state() {
    state_->setText(state());
    notice_->say(refused());
    const Path before = watch_.watched_before();
    again_->setVisible(!before.empty());
    //: a folder that was watched when the program was closed
    again_->setText(tr("Watch %1 again").arg(from_utf8(before.filename().native())));
    again_->setToolTip(from_utf8(before.native()));
    button_->setText(watch_.folder().empty() ? tr("Watch a folder…") : tr("Stop watching"));
}

}  // namespace quarterturn
