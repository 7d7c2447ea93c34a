#include "ui/widgets/progress_panel.h"

#include <QCoreApplication>
#include <QLocale>
#include <QProgressBar>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int bar_steps = 1000;

}  // namespace

ProgressPanel::ProgressPanel(const QString& work, QWidget* parent)
    : QFrame(parent),
      count_(make_text({})),
      file_(make_quiet({})),
      left_(make_quiet({})),
      bar_(new QProgressBar),
      pause_(make_button(tr("Pause"))),
      stop_(make_button(tr("Stop, keep what is done"))) {
    setProperty("kind", QStringLiteral("card"));
    bar_->setRange(0, bar_steps);
    bar_->setTextVisible(false);
    bar_->setAccessibleName(work);
    connect(pause_, &QPushButton::clicked, this, &ProgressPanel::toggle_pause);
    connect(stop_, &QPushButton::clicked, this, &ProgressPanel::stop_asked);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(2));
    column->addWidget(make_heading(work));
    column->addWidget(count_);
    column->addWidget(bar_);
    column->addWidget(file_);
    column->addWidget(left_);
    QHBoxLayout* buttons = make_row();
    buttons->addWidget(pause_);
    buttons->addWidget(stop_);
    buttons->addStretch();
    column->addLayout(buttons);
}

void ProgressPanel::show_progress(qint64 done, qint64 total, const QString& file,
                                  std::optional<std::chrono::seconds> left) {
    //: how many photos of how many
    count_->setText(tr("%1 of %2").arg(QLocale().toString(done), QLocale().toString(total)));
    bar_->setValue(total > 0 ? static_cast<int>(done * bar_steps / total) : 0);
    file_->setText(file);
    left_->setText(left ? time_left_sentence(*left) : QString());
}

void ProgressPanel::toggle_pause() {
    paused_ = !paused_;
    pause_->setText(paused_ ? tr("Go on") : tr("Pause"));
    emit pause_asked(paused_);
}

QString time_left_sentence(std::chrono::seconds left) {
    const int seconds = static_cast<int>(left.count());
    if (seconds < 60) return ProgressPanel::tr("less than a minute left");
    return ProgressPanel::tr("about %n minute(s) left", nullptr, (seconds + 30) / 60);
}

}  // namespace quarterturn
