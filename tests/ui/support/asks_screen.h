#pragma once
// What a test asks of a screen, and does there as she would with the keyboard.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLabel>
#include <QTest>

namespace quarterturn {

class AsksScreen {
  protected:
    ~AsksScreen() = default;
    virtual QWidget& asked() = 0;

    bool says(const QString& words) {
        for (const auto* label : asked().findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }

    // By its text or its name for a screen reader.
    QAbstractButton* button(const QString& name) {
        for (auto* found : asked().findChildren<QAbstractButton*>()) {
            if (found->isVisible() && (found->accessibleName() == name || found->text() == name)) {
                return found;
            }
        }
        return nullptr;
    }

    void press(const QString& name) {
        QAbstractButton* found = button(name);
        ASSERT_NE(found, nullptr) << name.toStdString();
        found->setFocus();
        QTest::keyClick(found, Qt::Key_Space);
        QCoreApplication::processEvents();  // what has come is shown
    }

    template <class Field>
    Field* field(const QString& name) {
        for (auto* found : asked().findChildren<Field*>()) {
            if (found->isVisible() && found->accessibleName() == name) return found;
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }
};

}  // namespace quarterturn
