#include "ui/wedding_morning/bell.h"

#include <QApplication>
#include <QAudioDevice>
#include <QMediaDevices>
#include <QSoundEffect>
#include <memory>

namespace quarterturn {
namespace {

class SmallBell final : public Bell {
  public:
    bool can_be_heard() override { return !QMediaDevices::defaultAudioOutput().isNull(); }

    void ring() override {
        if (!can_be_heard()) return QApplication::beep();
        if (!sound_) {
            sound_ = std::make_unique<QSoundEffect>();
            sound_->setSource(QUrl(QStringLiteral("qrc:/wedding_morning/time-is-up.wav")));
        }
        sound_->play();  // as soon as it is read
    }

  private:
    std::unique_ptr<QSoundEffect> sound_;
};

}  // namespace
}  // namespace quarterturn

extern "C" quarterturn::Bell* quarterturn_make_bell() {
    return std::make_unique<quarterturn::SmallBell>().release();
}
