#include "ui/theme/theme.h"

#include <QApplication>
#include <QPainter>
#include <QSettings>
#include <QStyleFactory>

#include "ui/theme/paper_style.h"
#include "ui/theme/style_sheet.h"

namespace quarterturn {
namespace {

const QString mood_key = QStringLiteral("theme/mood");
const QString text_size_key = QStringLiteral("theme/text_size");
const QStringList mood_names{QStringLiteral("paper"), QStringLiteral("dawn")};
const QStringList size_names{QStringLiteral("normal"), QStringLiteral("large"),
                             QStringLiteral("largest")};

int remembered(const QString& key, const QStringList& names) {
    return std::max<int>(0, static_cast<int>(names.indexOf(QSettings().value(key).toString())));
}

}  // namespace

void apply_theme(QApplication& application, const Theme& theme) {
    if (!qobject_cast<PaperStyle*>(QApplication::style())) {
        QApplication::setStyle(new PaperStyle);
    }
    QApplication::setFont(text_font(TextRole::body, theme.text_size));
    QApplication::setPalette(make_palette(theme.mood));
    application.setStyleSheet(style_sheet(make_palette(theme.mood)));
}

Theme remembered_theme() {
    return {static_cast<Mood>(remembered(mood_key, mood_names)),
            static_cast<TextSize>(remembered(text_size_key, size_names))};
}

void remember_theme(const Theme& theme) {
    QSettings settings;
    settings.setValue(mood_key, mood_names[static_cast<int>(theme.mood)]);
    settings.setValue(text_size_key, size_names[static_cast<int>(theme.text_size)]);
}

void draw_focus_ring(QPainter& painter, const QRect& area, const QPalette& palette) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(accent_colour(palette), 2));
    painter.drawRoundedRect(QRectF(area).adjusted(1, 1, -1, -1), 6, 6);
    painter.restore();
}

}  // namespace quarterturn
