#include "ui/pairs/like_bar.h"

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

LikeBar::LikeBar(QWidget* parent)
    : QFrame(parent),
      picture_(new QLabel),
      sentence_(make_heading({})),
      whose_(make_quiet(tr("Somebody else's work: never exported, and kept only if you say with "
                           "whom."))),
      keep_(make_button(tr("Keep it with a client  ▾"))) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space(2), 0, space(2), 0);
    row->setSpacing(space(4));
    QPushButton* back = make_button(tr("Back to the pairs"));
    connect(back, &QPushButton::clicked, this, &LikeBar::left);
    row->addWidget(picture_);
    QVBoxLayout* words = make_column(1);
    words->addStretch();
    words->addWidget(sentence_);
    words->addWidget(whose_);
    words->addStretch();
    row->addLayout(words, 1);
    connect(keep_, &QPushButton::clicked, this, &LikeBar::keep_asked);
    row->addWidget(keep_);
    row->addWidget(back);
}

void LikeBar::show_like(const QString& sentence, const QImage& picture) {
    sentence_->setText(sentence);
    for (QWidget* part : {static_cast<QWidget*>(picture_), static_cast<QWidget*>(whose_),
                          static_cast<QWidget*>(keep_)}) {
        part->setVisible(!picture.isNull());
    }
    if (picture.isNull()) return;
    const QSize pixels = QSize(space(30), space(24)) * devicePixelRatioF();
    QPixmap small =
        QPixmap::fromImage(picture.scaled(pixels, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    small.setDevicePixelRatio(devicePixelRatioF());
    picture_->setPixmap(small);
    picture_->setAccessibleName(tr("The picture that the looks are compared with"));
}

}  // namespace quarterturn
